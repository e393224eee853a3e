using Advice.Rules.Bench.Probes;
using Advice.Rules.RuleSets;

namespace Advice.Rules.Tests.Bench;

public class RuleProbeTests
{
    private const string Disc = """
        faults: [{id: disc-worn, name: disc worn, system: brakes, prior: 0.05, ageing: steady, consequence: nuisance, deficiency: minor, source: judgement}]
        checks: [{id: disc-look, title: Look at it., system: brakes, area: wheels, minutes: 5, doneBy: owner, needs: [], method: [Look.], falseAlarm: 0.3, observations: [{id: good, normal: true, text: good}, {id: bad, text: bad}], detects: [{fault: disc-worn, surely: 0.4}], cautions: []}]
        shows: [{id: disc-squeal, fault: disc-worn, symptom: squeal, often: often, because: It rubs less., source: judgement}]
        """;

    private static readonly Lazy<IReadOnlyList<ProbedRule>> Probed = new(() => new RuleProbes(RepositoryRules.Book).Rules);

    [Fact]
    public void Rules_OfThisRepository_AreShownBothWaysByProbes()
    {
        var report = new ProbeReport(Probed.Value, []);

        Assert.Equal(RepositoryRules.Book.Catalogue.Rules.Keys.Order(StringComparer.Ordinal), Probed.Value.Select(rule => rule.Rule).Order(StringComparer.Ordinal));
        Assert.True(report.RuleShare >= 0.98, string.Join('\n', report.Lines(list: false)));
        Assert.InRange(Probed.Value.Average(rule => rule.Conditions.Count(condition => condition.BothWays) / (double)rule.Conditions.Count), 0.98, 1);
    }

    [Fact]
    public void Engine_InEveryProbe_DoesWhatTheConditionsSay() => Assert.Equal([], Probed.Value.Where(rule => rule.Disagreements > 0).Select(rule => rule.Rule));

    [Fact]
    public void Shows_WithOccasions_AreLeftOpenToo()
    {
        var known = RepositoryRules.Book.Catalogue;
        var lasting = known.Rules.Values.OfType<Knowledge.Rules.ShowsRule>().Where(rule => rule.Occasions.Count > 0)
            .ToDictionary(rule => rule.Id, rule => !rule.Occasions.All(one => known.Occasions[one].IsEvent));

        Assert.Contains(true, lasting.Values);
        Assert.All(Probed.Value.Where(rule => lasting.ContainsKey(rule.Rule)), rule => Assert.True(rule.LeftOpen > 0 == lasting[rule.Rule], rule.Rule));
    }

    [Theory]
    [InlineData("driving: [{id: disc-stop, fault: disc-worn, probability: 0.99, advice: stop, because: It may break., source: judgement}]", "disc-stop", "it fired in none of 2 cases; in the first these fail: fault disc-worn from 0.99")]
    [InlineData("driving: [{id: disc-stop, symptom: squeal, advice: soon, because: It may break., source: judgement}]", "disc-stop", null)]
    public void Rule_Probed_IsShownBothWaysOrSaysWhyNot(string rule, string id, string? lacks)
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        File.Copy(Path.Combine(RepositoryRules.Directory, "..", "tests", "Advice.Rules.Tests", "Words", "words.yaml"), Path.Combine(folder.FullName, "words.yaml"));
        File.WriteAllText(Path.Combine(folder.FullName, "own.yaml"), $"{Disc}\n{rule}\n");
        var probed = new RuleProbes(RuleSetLoader.Load(folder.FullName)).Rules;
        folder.Delete(recursive: true);

        Assert.Equal(lacks, probed.Single(one => one.Rule == id).Lacks);
        Assert.Equal(lacks is null, new ProbeReport(probed, []).Lines(list: false).All(line => !line.Contains($"{id} (", StringComparison.Ordinal)));
    }
}
