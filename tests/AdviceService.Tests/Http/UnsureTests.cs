using System.Text.Json;

namespace AdviceService.Tests.Http;

/// <summary>What a driver cannot tell is not asked again, and nothing is concluded from it.</summary>
[Collection(Served.ByHttp)]
public class UnsureTests(RunningService service)
{
    private const string Complaint = "It squeals when I brake";

    [Fact]
    public async Task Advise_UnsureOfAQuestion_AsksAnotherAndConcludesNothing()
    {
        var before = await AskAsync("/v1/advice", []);
        var asked = Asked(before);
        Assert.NotEmpty(asked);

        var after = await AskAsync("/v1/advice", [asked[0]]);

        Assert.DoesNotContain(asked[0], Asked(after));
        Assert.Equal(asked.Skip(1), Asked(after).Take(asked.Count - 1));
        foreach (var same in new[] { "suspects", "steps", "driving", "understood" })
            Assert.True(JsonElement.DeepEquals(before.GetProperty(same), after.GetProperty(same)), same);
    }

    [Fact]
    public async Task Advise_ANoInstead_ChangesWhatIsSuspected()
    {
        var before = await AskAsync("/v1/advice", []);
        var denied = new[] { new { symptom = Asked(before)[0], present = false } };
        var after = await service.AdviseAsync(JsonSerializer.Serialize(new { asOf = "2026-03-01", vehicle = new { }, complaint = Complaint, symptoms = denied }));

        Assert.False(JsonElement.DeepEquals(before.GetProperty("suspects"), after.GetProperty("suspects")));
    }

    [Theory]
    [InlineData("It squeals when I brake")]
    [InlineData("What a lovely sunny day")]
    public async Task Intake_UnsureOfAQuestion_DoesNotAskItAgain(string complaint)
    {
        var asked = Asked(await AskAsync("/v1/intake", [], complaint));
        Assert.NotEmpty(asked);

        Assert.DoesNotContain(asked[0], Asked(await AskAsync("/v1/intake", [asked[0]], complaint)));
    }

    [Fact]
    public async Task Advise_UnsureOfNoSymptom_IsRefusedWithItsPlace()
    {
        var response = await service.Client.PostAsync("/v1/advice", RunningService.Json("""{"vehicle":{},"unsure":["squeal","sqeal"]}"""));

        Assert.Equal(422, (int)response.StatusCode);
        Assert.Contains("/unsure/1", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    private static List<string> Asked(JsonElement answer) =>
        [.. answer.GetProperty("questions").EnumerateArray().Select(question => question.GetProperty("symptom").GetString()!)];

    private Task<JsonElement> AskAsync(string route, string[] unsure, string complaint = Complaint) =>
        service.AskAsync(route, JsonSerializer.Serialize(new { asOf = "2026-03-01", vehicle = new { }, complaint, unsure }));
}
