using Advice.Knowledge.Rules;
using Advice.Rules.Bench.Sensitivity;
using Advice.Rules.Cases;
using Advice.Rules.RuleSets;
using Advice.Rules.Tests.Cases;

namespace Advice.Rules.Tests.Bench;

public class StabilityTests
{
    // Two faults of one harm, a check of one length for each: only how often they squeal tells which comes first.
    private const string Rules =
        """
        faults:
          - {id: a-worn, name: a worn, system: brakes, prior: 0.2, ageing: steady, consequence: nuisance, deficiency: minor, source: judgement}
          - {id: b-worn, name: b worn, system: brakes, prior: 0.2, ageing: steady, consequence: nuisance, deficiency: minor, source: judgement}
        checks:
          - {id: a-look, title: Look at a, system: brakes, area: wheels, minutes: 5, doneBy: owner, needs: [], tools: [], method: [Look at a.], observations: [{id: good, normal: true, text: good}, {id: bad, text: bad}], detects: [{fault: a-worn, surely: 0.9}], falseAlarm: 0.01, cautions: []}
          - {id: b-look, title: Look at b, system: brakes, area: wheels, minutes: 5, doneBy: owner, needs: [], tools: [], method: [Look at b.], observations: [{id: good, normal: true, text: good}, {id: bad, text: bad}], detects: [{fault: b-worn, surely: 0.9}], falseAlarm: 0.01, cautions: []}
        shows:
          - {id: a-squeals, fault: a-worn, symptom: squeal, often: usually, because: It rubs., source: judgement}
          - {id: b-squeals, fault: b-worn, symptom: squeal, often: sometimes, because: It rubs less., source: judgement}
        """;

    private static readonly RuleBook Book = WrittenRules.Beside(null, null, folder =>
    {
        File.WriteAllText(Path.Combine(folder, "topic.yaml"), Rules);
        return RuleSetLoader.Load(folder);
    });

    private static readonly Stability Stability = new(Book, CaseFolder.Read(
        [new("own.cases.yaml", System.Text.Encoding.UTF8.GetBytes("cases:\n  - {id: squeals, given: {vehicle: {}, symptoms: [{symptom: squeal}]}, first: a-look}\n"))],
        Book.Catalogue, PlainRequest.Read).Cases);

    [Fact]
    public void Under_NothingMoved_EveryStepStays()
    {
        var outcome = Stability.Under(new Variation("nothing", rule => rule.Often, fault => fault.Prior));

        Assert.Equal((1, 1.0, 1.0), (outcome.Cases, outcome.FirstStays, outcome.ThreeStay));
    }

    [Fact]
    public void Under_TheOtherMoreOften_NamesTheStepThenAndNow()
    {
        var outcome = Stability.Under(new Variation("b more often", rule => rule.Id == "b-squeals" ? 0.95 : rule.Often, fault => fault.Prior));

        Assert.Equal(("squeals", "a-look", "b-look"), Assert.Single(outcome.Moved));
        Assert.Equal((0.0, 1.0), (outcome.FirstStays, outcome.ThreeStay));
    }

    [Theory]
    [InlineData("a-squeals", 2)]
    [InlineData("a-worn", 2)]
    [InlineData("a-look", 0)]
    public void VariationOf_LinkOrFault_MovesItAloneUpAndDown(string id, int variations)
    {
        var found = Variation.Of(id, Book.Catalogue).ToList();

        Assert.Equal(variations, found.Count);
        Assert.All(found, variation => Assert.Equal(
            [id],
            Book.Catalogue.Rules.Values.OfType<ShowsRule>().Where(rule => variation.Often(rule) != rule.Often).Select(rule => rule.Id)
                .Concat(Book.Catalogue.Faults.Values.Where(fault => variation.Prior(fault) != fault.Prior).Select(fault => fault.Id))));
    }

    [Fact]
    public void AtRandom_SameSeed_DrawsTheSame()
    {
        var (one, other) = (Variation.AtRandom(Book.Catalogue, 3), Variation.AtRandom(Book.Catalogue, 3));

        Assert.All(Book.Catalogue.Rules.Values.OfType<ShowsRule>(), rule => Assert.Equal(one.Often(rule), other.Often(rule)));
    }

    [Fact]
    public void Report_Whole_SaysBothHeadlines()
    {
        Outcome[] alone = [new("x", 10, [("c", "a", "b")], 9), new("y", 10, [], 10)];
        Outcome[] together = [new("z", 10, [("c", "a", "b"), ("d", "a", null)], 5)];
        var lines = StabilityReport.Whole(alone, together).ToList();

        Assert.Contains(lines, line => line.StartsWith("One estimate moved at a time: the first step stays in 95.0 % of the cases on average, in 90.0 % at worst (at or above the target", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith("All estimates moved at once:  the first step stays in 80.0 % of the cases on average, in 80.0 % at worst (below the target", StringComparison.Ordinal));
    }
}
