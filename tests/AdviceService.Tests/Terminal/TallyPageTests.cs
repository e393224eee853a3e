using System.Text;
using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Words;
using AdviceService.Fleet.Scoring;
using AdviceService.Terminal;
using AdviceService.Tests.Http;
using Microsoft.Extensions.DependencyInjection;

namespace AdviceService.Tests.Terminal;

[Collection(Served.ByHttp)]
public class TallyPageTests(RunningService service)
{
    private readonly Catalogue _catalogue = service.Services.GetRequiredService<IRuleBook>().Catalogue;
    private readonly Tally _tally = new(service.Services.GetRequiredService<IRuleBook>().Catalogue.PartsByFault);

    [Fact]
    public void Page_Always_NeedsNothingBesideItself()
    {
        Add("brake-pad-thickness", "brake-pads-worn");

        var page = Page();

        Assert.Contains("<svg", page, StringComparison.Ordinal);
        foreach (var elsewhere in (string[])["http:", "https:", "src=", "href=", "url(", "@import", "<script", "<link"])
            Assert.DoesNotContain(elsewhere, page, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Page_OfAnotherRuleSet_NamesWhatIsUnknownById()
    {
        Add("check-<of-tomorrow>", "fault-of-tomorrow");

        var page = Page();

        Assert.Contains("check-&lt;of-tomorrow&gt;", page, StringComparison.Ordinal);
        Assert.Contains("fault-of-tomorrow", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_FaultsWithOnePart_CountsTheVehiclesThatNeedIt()
    {
        var part = _catalogue.Parts.Values.First(one => one.Faults.Count > 1);

        Add("brake-pad-thickness", string.Join("\",\"", part.Faults.Take(2)));
        Add("brake-pad-thickness", part.Faults[0]);

        Assert.Equal(2, _tally.Parts[part.Id]);
        Assert.Contains(part.Name.For(Audience.Technician), Page(), StringComparison.Ordinal);
    }

    private void Add(string check, string fault) => _tally.Add(Encoding.UTF8.GetBytes(
        $$$"""{"id":1,"line":1,"triage":{"driving":"soon","checks":["{{{check}}}"],"faults":["{{{fault}}}"],"minutes":10,"withinDays":7}}"""));

    private string Page() => TallyPage.Of(_tally, _catalogue);
}
