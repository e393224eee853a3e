namespace AdviceService.Tests.Verbs;

public class RulesVerbTests
{
    private static readonly string Rules = Path.Combine(Repository.Root, "rules");

    [Theory]
    [InlineData(0, "no error", "check")]
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
    [InlineData(1, "Below 100 %", "cover", "--at-least", "100")]
    [InlineData(0, "of the conditions seen both ways", "cover", "--at-least", "72")]
    public async Task Rules_Verb_SaysAndEnds(int exitCode, string says, params string[] args)
    {
        var (ended, output, error) = await Run.ToEndAsync("", ["rules", .. args, "--rules", Rules]);

        Assert.Equal(exitCode, ended);
        Assert.Contains(says, output + error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Diff_RuleMadeLaxer_NamesTheCaseAndWhatItWas()
    {
        var other = Directory.CreateTempSubdirectory("rules-");
        var cut = 0;
        foreach (var file in Directory.GetFiles(Rules, "*.yaml", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(other.FullName, Path.GetRelativePath(Rules, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            var lines = await File.ReadAllLinesAsync(file);
            var kept = lines.Where(line => !line.Contains("symptom: coolant-puddle, advice:", StringComparison.Ordinal)).ToList();
            cut += lines.Length - kept.Count;
            await File.WriteAllLinesAsync(copy, kept);
        }

        var requests = Path.Combine(other.FullName, "more.ndjson");
        await File.WriteAllTextAsync(requests, """{"id":1,"vehicle":{},"symptoms":[{"symptom":"coolant-puddle"}]}""");
        var (ended, output, _) = await Run.ToEndAsync("", "rules", "diff", Rules, other.FullName, "--requests", requests);
        other.Delete(recursive: true);

        Assert.Equal((0, 1), (ended, cut));
        Assert.Contains("green-puddle-and-sweet-smell: driving workshopOnly → soon (laxer)", output, StringComparison.Ordinal);
        Assert.Contains("more.ndjson line 1: driving workshopOnly → ", output, StringComparison.Ordinal);
    }
}
