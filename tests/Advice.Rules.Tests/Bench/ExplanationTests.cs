using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Rules.Bench;

namespace Advice.Rules.Tests.Bench;

public class ExplanationTests
{
    private static readonly Catalogue Catalogue = RepositoryRules.Book.Catalogue;
    private static readonly Explanation Explanation = new(Catalogue);

    /// <summary>Whoever asks for a thing sees every rule about it.</summary>
    [Fact]
    public void Of_AnyIdThatARuleNames_NamesThatRule()
    {
        var named = Catalogue.Rules.Values.SelectMany(Named, (rule, id) => (rule.Id, About: id)).GroupBy(one => one.About, one => one.Id);
        foreach (var about in named)
        {
            var text = string.Join('\n', Explanation.Of(about.Key));
            Assert.All(about, rule => Assert.Contains($"[{rule}]", text, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Of_EveryId_SaysSomething() => Assert.All(Explanation.Ids, id => Assert.NotEmpty(Explanation.Of(id)));

    [Fact]
    public void Of_UnknownId_SaysNothing() => Assert.Empty(Explanation.Of("no-such-id"));

    [Theory]
    [InlineData("pads-squeal", "rule pads-worn shows squeal usually 0.8  [pads-squeal] It rubs. (our estimate)")]
    [InlineData("pads-worn", "    pad-look surely 0.9 in 5 min")]
    [InlineData("squeal", "    0.05 × 0.8 = 0.04  pads-worn shows squeal usually 0.8  [pads-squeal] It rubs. (our estimate)")]
    [InlineData("pad-look", "    pads-worn surely 0.9 (base rate 0.05, harm 1)")]
    [InlineData("brake-dust", "  on pad-look")]
    public void Of_SharedWords_HoldsTheLine(string id, string line) =>
        Assert.Contains(line, new Explanation(WrittenRules.Beside(null, null, RuleSets.RuleSetLoader.Load).Catalogue).Of(id));

    private static IEnumerable<string> Named(Rule rule) => rule switch
    {
        ShowsRule shows => [shows.Fault, shows.Sign.Id, .. shows.Without],
        ProneRule prone => prone.Faults,
        FitsRule fits => [.. fits.Faults, .. fits.Checks],
        ImpliesRule implies => [implies.Sign.Id, implies.Implied.Id],
        WarnsRule warns => [.. warns.Symptoms, .. warns.Checks, warns.Caution, .. Fault(warns.Fault)],
        DrivingRule driving => [.. driving.Symptoms, .. Fault(driving.Fault)],
        NormalRule normal => [normal.Symptom],
        _ => [],
    };

    private static IEnumerable<string> Fault(string? fault) => fault is null ? [] : [fault];
}
