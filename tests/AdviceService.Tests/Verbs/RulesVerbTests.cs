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
    [InlineData(0, "symptoms:", "cover")]
    [InlineData(1, "Below 100", "cover", "--at-least", "1")]
    public async Task Rules_Verb_SaysAndEnds(int exitCode, string says, params string[] args)
    {
        var (ended, output, error) = await Run.ToEndAsync("", ["rules", .. args, "--rules", Rules]);

        Assert.Equal(exitCode, ended);
        Assert.Contains(says, output + error, StringComparison.Ordinal);
    }
}
