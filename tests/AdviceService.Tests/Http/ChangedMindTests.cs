using System.Text.Json;

namespace AdviceService.Tests.Http;

/// <summary>A driver in conversation: an answer counts more than what the text says against it, and needs no question.</summary>
[Collection(Served.ByHttp)]
public class ChangedMindTests(RunningService service)
{
    [Theory]
    [InlineData("It squeals when I brake", """{"symptom":"squeal","present":false}""", "squeal no")]
    [InlineData("No squeal", """{"symptom":"squeal"}""", "squeal yes")]
    [InlineData("No squeal", """{"symptom":"squeal","occasions":["braking"]}""", "squeal braking yes")]
    [InlineData("It squeals when I brake", """{"symptom":"squeal","occasions":["high-speed"],"present":false}""", "squeal braking yes, squeal high-speed no")]
    [InlineData("It squeals when I brake", """{"symptom":"grinding"}""", "grinding yes, squeal braking yes")]
    [InlineData("", """{"symptom":"squeal","position":"rear","present":false},{"symptom":"squeal","position":"front"}""", "squeal front yes, squeal rear no")]
    public async Task Advise_AnswerAgainstTheText_TheAnswerCounts(string complaint, string symptoms, string counts)
    {
        var advice = await service.AdviseAsync($$"""{"vehicle":{},"complaint":"{{complaint}}","symptoms":[{{symptoms}}]}""");

        Assert.Equal(counts, string.Join(", ", advice.GetProperty("understood").GetProperty("symptoms").EnumerateArray().Select(Said).Order(StringComparer.Ordinal)));
    }

    [Fact]
    public async Task Advise_MindChanged_IsAnsweredAsIfItHadBeenSaidAtOnce()
    {
        var (changed, atOnce) = (
            await service.AdviseAsync("""{"vehicle":{},"complaint":"It squeals","symptoms":[{"symptom":"squeal","present":false},{"symptom":"grinding"}]}"""),
            await service.AdviseAsync("""{"vehicle":{},"symptoms":[{"symptom":"squeal","present":false},{"symptom":"grinding"}]}"""));

        foreach (var same in new[] { "suspects", "steps", "driving", "questions" })
            Assert.True(JsonElement.DeepEquals(changed.GetProperty(same), atOnce.GetProperty(same)), same);
    }

    private static string Said(JsonElement one) => string.Join(' ', new[]
    {
        one.GetProperty("symptom").GetString(), string.Join('+', one.GetProperty("occasions").EnumerateArray().Select(occasion => occasion.GetString())),
        one.GetProperty("position").GetString(), one.GetProperty("present").GetBoolean() ? "yes" : "no",
    }.Where(word => !string.IsNullOrEmpty(word)));
}
