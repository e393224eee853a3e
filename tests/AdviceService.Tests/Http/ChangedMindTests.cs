using System.Text.Json;

namespace AdviceService.Tests.Http;

/// <summary>A driver in conversation: an answer counts more than what the text says against it, and needs no question.</summary>
[Collection(Served.ByHttp)]
public class ChangedMindTests(RunningService service)
{
    [Theory]
    [InlineData("It rattles when I brake", """{"symptom":"rattle","present":false}""", "rattle no")]
    [InlineData("No squeal", """{"symptom":"squeal"}""", "squeal yes")]
    [InlineData("No squeal", """{"symptom":"squeal","occasions":["braking"]}""", "squeal braking yes")]
    [InlineData("It rattles when I brake", """{"symptom":"rattle","occasions":["high-speed"],"present":false}""", "rattle braking yes, rattle high-speed no")]
    [InlineData("It rattles when I brake", """{"symptom":"grinding"}""", "grinding yes, rattle braking yes")]
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
