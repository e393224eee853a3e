namespace AdviceService.Tests.Http;

/// <summary>A driver of whom nothing is understood is asked something to begin with.</summary>
[Collection(Served.ByHttp)]
public class OpeningQuestionTests(RunningService service)
{
    [Theory]
    [InlineData("""{"vehicle":{}}""")]
    [InlineData("""{"vehicle":{"fuel":"electric"},"complaint":"it acts up"}""")]
    [InlineData("""{"vehicle":{"modelYear":2012},"symptoms":[{"symptom":"squeal","present":false}]}""")]
    public async Task Advise_NothingSuspected_AsksAnOpeningQuestion(string request)
    {
        var questions = (await service.AdviseAsync(request)).GetProperty("questions").EnumerateArray().ToList();

        Assert.Equal(3, questions.Count);
        Assert.All(questions, question => Assert.StartsWith("Then the first step is", question.GetProperty("ifYes").GetString(), StringComparison.Ordinal));
        Assert.Equal(questions.Select(question => question.GetProperty("worth").GetDouble()).OrderDescending(), questions.Select(question => question.GetProperty("worth").GetDouble()));
    }

    /// <summary>Saying yes to it leads to a step.</summary>
    [Fact]
    public async Task Advise_YesToTheOpeningQuestion_Suspects()
    {
        var symptom = (await service.AdviseAsync("""{"vehicle":{}}""")).GetProperty("questions")[0].GetProperty("symptom").GetString();

        var advice = await service.AdviseAsync($$"""{"vehicle":{},"symptoms":[{"symptom":"{{symptom}}"}]}""");

        Assert.NotEqual(0, advice.GetProperty("steps").GetArrayLength());
    }

    [Theory]
    [InlineData("it acts up", "engine-lamp")]
    [InlineData("something about the brakes", "brakes-trouble")]
    public async Task Intake_NothingUnderstood_AsksForWhatWasNamedFirst(string text, string symptom)
    {
        var intake = await service.AskAsync("/v1/intake", $$"""{"text":"{{text}}"}""");

        Assert.Empty(intake.GetProperty("symptoms").EnumerateArray());
        Assert.Equal(symptom, intake.GetProperty("questions").EnumerateArray().First(question => question.GetProperty("about").ValueKind == System.Text.Json.JsonValueKind.Null).GetProperty("symptom").GetString());
    }
}
