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

    /// <summary>A system that the text speaks of is asked for before what tells systems apart.</summary>
    [Theory]
    [InlineData("it acts up", "engine-lamp", "tyre-pressure-lamp")]
    [InlineData("something about the brakes", "brakes-trouble", "engine-lamp")]
    public async Task Intake_NothingUnderstood_AsksForWhatWasNamedFirst(string text, string first, string then)
    {
        var intake = await service.AskAsync("/v1/intake", $$"""{"text":"{{text}}"}""");

        Assert.Empty(intake.GetProperty("symptoms").EnumerateArray());
        var asked = intake.GetProperty("questions").EnumerateArray().Select(question => question.GetProperty("symptom").GetString()).ToList();
        Assert.Contains(first, asked);
        Assert.True(asked.IndexOf(first) < asked.IndexOf(then), string.Join(", ", asked));
    }
}
