namespace AdviceService.Tests.Verbs;

public class RulesVerbTests
{
    private static readonly string Rules = RulesCopy.Shipped;

    /// <summary>As a person starts it; the verbs below run within the process.</summary>
    [Fact]
    public async Task Check_Started_SaysWhatTheSetHolds()
    {
        var (ended, output, error) = await Run.ToEndAsync("", "rules", "check", "--rules", Rules);

        Assert.True(ended == 0, output + error);
        Assert.Matches(@"\d+ rules, .* cases: no error, 0 warnings\.\s*$", output);
    }

    [Theory]
    [InlineData(0, "fault coolant-hose-weak", "explain", "coolant-hose-weak")]
    [InlineData(1, "did you mean 'coolant-hose-weak'?", "explain", "coolant-hose-weka")]
    [InlineData(0, "steps: harm", "why", "green-puddle-and-sweet-smell")]
    [InlineData(0, "base rate", "why", "green-puddle-and-sweet-smell", "radiator-leaking")]
    [InlineData(0, "rank ", "why", "green-puddle-and-sweet-smell", "coolant-leak-look")]
    [InlineData(1, "no fault or check", "why", "green-puddle-and-sweet-smell", "no-such-thing")]
    [InlineData(1, "no case", "why", "no-such-case-anywhere")]
    [InlineData(0, "digraph", "graph", "steering")]
    [InlineData(0, "</svg>", "graph", "steering", "--format", "svg")]
    [InlineData(1, "did you mean 'steering'?", "graph", "stering")]
    [InlineData(0, "of the conditions seen both ways", "cover", "--at-least", "86")]
    [InlineData(1, "did you mean 'coolant-hose-weak'?", "explain", "coolant-hose-weka", "--sensitivity")]
    [InlineData(1, "Name an ID", "explain")]
    [InlineData(1, "--draws must be at least 1", "explain", "--sensitivity", "--draws", "0")]
    public async Task Rules_Verb_SaysAndEnds(int exitCode, string says, params string[] args)
    {
        var (ended, output, error) = await Here.ToEndAsync(["rules", .. args, "--rules", Rules]);

        Assert.Equal(exitCode, ended);
        Assert.Contains(says, output + error, StringComparison.Ordinal);
    }

    /// <summary>A set of one case that the estimates decide: both headlines of its sensitivity, that of one link, and a coverage below the threshold.</summary>
    [Fact]
    public async Task Sensitivity_SmallSet_SaysHowManyFirstStepsStay()
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        File.Copy(Path.Combine(Repository.Root, "tests", "Advice.Rules.Tests", "Words", "words.yaml"), Path.Combine(folder.FullName, "words.yaml"));
        await File.WriteAllTextAsync(Path.Combine(folder.FullName, "own.yaml"), """
            faults: [{id: disc-worn, name: disc worn, system: brakes, prior: 0.05, ageing: steady, consequence: nuisance, deficiency: minor, source: judgement}]
            checks: [{id: disc-look, title: Look at it., system: brakes, area: wheels, minutes: 5, doneBy: owner, needs: [], method: [Look.], falseAlarm: 0.05, observations: [{id: good, normal: true, text: good}, {id: bad, text: bad}], detects: [{fault: disc-worn, surely: 0.9}], cautions: []}]
            shows: [{id: disc-squeal, fault: disc-worn, symptom: squeal, often: often, because: It rubs less., source: judgement}]
            """);
        await File.WriteAllTextAsync(Path.Combine(folder.FullName, "own.cases.yaml"), "cases: [{id: squeals, given: {vehicle: {}, symptoms: [{symptom: squeal}]}, first: pad-look}]\n");

        var (ended, output, error) = await Here.ToEndAsync("rules", "explain", "--sensitivity", "--draws", "20", "--rules", folder.FullName);
        var (_, alone, _) = await Here.ToEndAsync("rules", "explain", "disc-squeal", "--sensitivity", "--rules", folder.FullName);
        var (below, cover, missed) = await Here.ToEndAsync("rules", "cover", "--at-least", "100", "--probes", "--rules", folder.FullName);
        folder.Delete(recursive: true);

        Assert.True(ended == 0, error);
        Assert.Contains("One estimate moved at a time: the first step stays in ", output, StringComparison.Ordinal);
        Assert.Matches("All estimates moved at once:  the first step stays in [1-9][0-9]?\\.[0-9] % of the cases on average, in 0\\.0 % at worst \\(below the target of 90 %\\)", output);
        Assert.Contains("squeals: ", output, StringComparison.Ordinal);
        Assert.Contains("often 0.5 → usually 0.8", alone, StringComparison.Ordinal);
        Assert.Equal(1, below);
        Assert.Contains("Below 100 %", cover + missed, StringComparison.Ordinal);
        Assert.Matches(@"100\.0 %  all rules +2 ", cover);
    }

    /// <summary>Who stands beside a folder of rules works on that, and not on the copy beside the binary.</summary>
    [Fact]
    public async Task Rules_StandingBesideAFolderOfRules_WorkOnIt()
    {
        var folder = Directory.CreateTempSubdirectory("clone-");
        var file = Path.Combine(folder.CreateSubdirectory("rules").FullName, "words.yaml");
        var words = await File.ReadAllTextAsync(Path.Combine(Repository.Root, "tests", "Advice.Rules.Tests", "Words", "words.yaml"));
        await File.WriteAllTextAsync(file, $"{words}codes:\n      - {{id: C0001, meaning: wire cut, system: brakes}}\n");

        var (checkedOk, held, _) = await Run.ToEndInAsync(folder.FullName, "", "rules", "check");
        var (formatted, changed, _) = await Run.ToEndInAsync(folder.FullName, "", "rules", "fmt");
        var text = await File.ReadAllTextAsync(file);
        folder.Delete(recursive: true);

        Assert.Equal((0, 0), (checkedOk, formatted));
        Assert.Contains("1 rules, 1 symptoms, 1 faults, 1 checks,", held, StringComparison.Ordinal);
        Assert.Contains($"rules{Path.DirectorySeparatorChar}words.yaml", changed, StringComparison.Ordinal);
        Assert.Contains("\n  - {id: C0001,", text, StringComparison.Ordinal);
    }

    /// <summary>What is wrong with a case file by itself is told although the rules cannot be used, and so is what cannot be told yet.</summary>
    [Fact]
    public async Task Check_RulesAndCasesBroken_NamesTheErrorsOfBoth()
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        File.Copy(Path.Combine(Repository.Root, "tests", "Advice.Rules.Tests", "Words", "words.yaml"), Path.Combine(folder.FullName, "words.yaml"));
        await File.WriteAllTextAsync(Path.Combine(folder.FullName, "own.yaml"), "shows:\n  - {id: own, fault: pads-wron, symptom: squeal, often: often, because: It rubs., source: judgement}\n");
        await File.WriteAllTextAsync(Path.Combine(folder.FullName, "own.cases.yaml"), "cases:\n  - id: squeals\n    given: {complaint: It squeals: loudly}\n");

        var (ended, output, error) = await Here.ToEndAsync("rules", "check", "--rules", folder.FullName);
        folder.Delete(recursive: true);

        Assert.Equal((1, ""), (ended, output));
        Assert.Contains("own.yaml(2,22): error unknown-id: unknown fault 'pads-wron'; did you mean 'pads-worn'?", error, StringComparison.Ordinal);
        Assert.Contains("own.cases.yaml(3,34): error malformed-yaml: ", error, StringComparison.Ordinal);
        Assert.Contains("1 error in case files so far; what they ask can be checked once the rules are right.", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bench_SmallSet_NamesEachStageWithItsTime()
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        File.Copy(Path.Combine(Repository.Root, "tests", "Advice.Rules.Tests", "Words", "words.yaml"), Path.Combine(folder.FullName, "words.yaml"));

        var (none, _, without) = await Here.ToEndAsync("rules", "bench", "--rules", folder.FullName);
        await File.WriteAllTextAsync(Path.Combine(folder.FullName, "own.cases.yaml"), "cases: [{id: squeals, given: {vehicle: {}, symptoms: [{symptom: squeal}]}, first: pad-look}]\n");
        var (ended, output, _) = await Here.ToEndAsync("rules", "bench", "--rounds", "1", "--rules", folder.FullName);
        folder.Delete(recursive: true);

        Assert.Equal((1, "There are no cases to time."), (none, without.Trim()));
        Assert.Equal(0, ended);
        Assert.All(["load, first", "load, again", "matching", "inference", "advice in a second"], stage => Assert.Matches($@"(?m)^{stage}.* [0-9]+\.[0-9]", output));
        Assert.Contains("1 cases, 1 rounds", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Diff_RuleMadeLaxer_NamesTheCaseAndWhatItWas()
    {
        var (one, other) = (Directory.CreateTempSubdirectory("rules-"), Directory.CreateTempSubdirectory("rules-"));
        var cut = 0;
        await RulesCopy.FillAsync(one.FullName, IsOfCooling);
        await RulesCopy.FillAsync(other.FullName, IsOfCooling, line =>
        {
            var kept = !line.Contains("symptom: coolant-puddle, advice:", StringComparison.Ordinal);
            cut += kept ? 0 : 1;
            return kept;
        });

        var requests = Path.Combine(other.FullName, "more.ndjson");
        await File.WriteAllTextAsync(requests, """{"id":1,"vehicle":{},"symptoms":[{"symptom":"coolant-puddle"}]}""");
        var (ended, output, _) = await Here.ToEndAsync("rules", "diff", one.FullName, other.FullName, "--requests", requests);
        one.Delete(recursive: true);
        other.Delete(recursive: true);

        Assert.Equal((0, 1), (ended, cut));
        Assert.Contains("green-puddle-and-sweet-smell: driving workshopOnly → soon (laxer)", output, StringComparison.Ordinal);
        Assert.Contains("more.ndjson line 1: driving workshopOnly → ", output, StringComparison.Ordinal);

        static bool IsOfCooling(string name) => name.StartsWith("cooling", StringComparison.Ordinal);
    }
}
