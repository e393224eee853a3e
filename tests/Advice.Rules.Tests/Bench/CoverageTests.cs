using Advice.Rules.Bench;

namespace Advice.Rules.Tests.Bench;

public class CoverageTests
{
    private static readonly Knowledge.Catalogue Catalogue = RepositoryRules.Book.Catalogue;

    [Fact]
    public void Kinds_NoCase_NothingIsTouched() =>
        Assert.All(new Coverage(Catalogue, []).Kinds, kind => Assert.Equal((0, kind.Count), (kind.Share, kind.Untouched.Count)));

    [Fact]
    public void Kinds_OneCase_TouchesWhatItsAnswerRestsOn()
    {
        var (_, advised, _) = RepositoryCases.Sample.First(one => one.Advised.Steps.Count > 0 && one.Advised.Case.Reports.Count > 0);
        var kinds = new Coverage(Catalogue, [advised]).Kinds.ToDictionary(kind => kind.Kind, kind => kind.Untouched);

        Assert.DoesNotContain(advised.Case.Reports[0].Symptom, kinds["symptoms"]);
        Assert.DoesNotContain(advised.Steps[0].Check.Id, kinds["checks"]);
        Assert.DoesNotContain(advised.Suspicion.Raised[0].Instance.Fault.Id, kinds["faults"]);
        Assert.DoesNotContain(advised.Suspicion.Raised[0].Instance.Links[0].Rule, kinds["rules: shows"]);
        Assert.Contains(kinds["checks"], check => Catalogue.Checks[check].Detects.All(detects => advised.Suspicion.Raised.All(suspect => suspect.Instance.Fault.Id != detects.Fault)));
    }

    [Fact]
    public void Kinds_MoreCases_NeverTouchLess()
    {
        var few = new Coverage(Catalogue, RepositoryCases.Sample.Take(5).Select(one => one.Advised)).Kinds;
        var more = new Coverage(Catalogue, RepositoryCases.Sample.Select(one => one.Advised)).Kinds;

        Assert.All(few.Zip(more), pair => Assert.Empty(pair.Second.Untouched.Except(pair.First.Untouched)));
        Assert.Contains(few.Zip(more), pair => pair.Second.Share > pair.First.Share);
    }
}
