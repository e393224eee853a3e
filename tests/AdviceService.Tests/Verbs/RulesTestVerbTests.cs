namespace AdviceService.Tests.Verbs;

public sealed class RulesTestVerbTests : IDisposable
{
    private const string Asked = "given: {vehicle: {fuel: gasoline}, complaint: The brake pedal slowly sinks to the floor.}";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory();

    [Fact]
    public async Task RulesTest_RepositoryRules_EveryCasePassesAndEveryPhraseIsRead()
    {
        var (exitCode, output, error) = await Here.ToEndAsync("rules", "test", "--rules", Path.Combine(Repository.Root, "rules"));

        Assert.True(exitCode == 0, output + error);
        Assert.Matches(@"^[1-9]\d* cases, 0 fail, 0 errors in case files\.\s+[1-9]\d* phrases, 0 misread\.\s*$", output);
    }

    [Fact]
    public async Task RulesTest_CaseThatFails_ShowsExpectedAndActualAndFails()
    {
        var (exitCode, output, _) = await TestAsync($"cases:\n  - id: pedal\n    {Asked}\n    driving: normal\n");

        Assert.Equal(1, exitCode);
        Assert.Contains("own.cases.yaml(2,5): pedal fails", output, StringComparison.Ordinal);
        Assert.Contains("expected driving: normal", output, StringComparison.Ordinal);
        Assert.Contains("actual   stop [", output, StringComparison.Ordinal);
        Assert.Contains("1 cases, 1 fail, 0 errors", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RulesTest_RequestThatTheServiceRefuses_NamesThePlaceAndRunsTheRest()
    {
        var (exitCode, output, error) = await TestAsync(
            $"cases:\n  - id: pedal\n    {Asked}\n    driving: stop\n  - id: wrong\n    given: {{vehicle: {{}}, symptoms: [{{symptom: squeel}}]}}\n    driving: soon\n");

        Assert.Equal(1, exitCode);
        Assert.Contains("own.cases.yaml(6,47): ", error, StringComparison.Ordinal);
        Assert.Contains("1 cases, 0 fail, 1 errors", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RulesTest_PhraseThatAnotherSymptomTakes_NamesItAndFails()
    {
        await File.WriteAllTextAsync(
            Path.Combine(_folder.FullName, "own.yaml"),
            """
            symptoms:
              - {id: own-sign, name: sign, specificity: ordinary, ask: Is there a sign?, phrases: [fuel leaking]}
            shows:
              - {id: own-sign-shown, fault: brake-pads-worn, symptom: own-sign, often: sometimes, because: Worn pads give a sign., source: judgement}

            """);

        var (exitCode, output, _) = await TestAsync($"cases:\n  - id: pedal\n    {Asked}\n    driving: stop\n");

        Assert.Equal(1, exitCode);
        Assert.Contains("the phrase 'fuel leaking' of 'own-sign' is read as fuel-leak", output, StringComparison.Ordinal);
        Assert.Contains("1 misread.", output, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private async Task<(int ExitCode, string Output, string Error)> TestAsync(string cases)
    {
        await RulesCopy.FillAsync(_folder.FullName, _ => false);
        await File.WriteAllTextAsync(Path.Combine(_folder.FullName, "own.cases.yaml"), cases);
        return await Here.ToEndAsync("rules", "test", "--rules", _folder.FullName);
    }
}
