using System.Net;

namespace AdviceService.Tests.Http;

[Collection(Served.ByHttp)]
public class JudgementsTests(RunningService service)
{
    /// <summary>49 CFR 570.9(a): 2/32 in of tread (1.5875 mm); Directive 2014/45/EU asks for 1.6 mm.</summary>
    [Theory]
    [InlineData("US", "1.59", "mm", "none")]
    [InlineData("EU", "1.59", "mm", "major")]
    [InlineData("US", "2", "32nds", "none")]
    [InlineData("DE", "2", "32nds", "major")]
    public async Task Judge_TreadBetweenTwoLaws_PassesOneOnly(string jurisdiction, string value, string unit, string legal)
    {
        var judgement = (await JudgeAsync($$"""{"check":"tyre-tread-depth","position":"front-left","value":{{value}},"unit":"{{unit}}"}""", jurisdiction))[0];

        var deficiency = judgement.GetProperty("deficiency").GetString();
        Assert.True(legal == "none" ? deficiency is "none" or "minor" : deficiency is "major" or "dangerous", judgement.ToString());
        Assert.NotEqual("", judgement.GetProperty("action").GetString());
    }

    [Fact]
    public async Task Judge_LimitOfTheCaller_WinsAndGivesTheMarginInItsOwnUnit()
    {
        var judgement = (await JudgeAsync(
            """{"check":"brake-disc-thickness","position":"front-left","value":21.5,"unit":"mm","limit":{"minimum":22,"unit":"mm","source":"stamped on the disc"}}""", "EU"))[0];

        Assert.Equal("stamped on the disc", judgement.GetProperty("source").GetString());
        Assert.Equal(-0.5, judgement.GetProperty("margin").GetDouble());
        Assert.Contains(judgement.GetProperty("deficiency").GetString(), new[] { "major", "dangerous" });
    }

    [Fact]
    public async Task Judge_DiscWithoutItsMinimum_IsNotJudgedAndSaysWhy()
    {
        var judgement = (await JudgeAsync("""{"check":"brake-disc-thickness","position":"front-left","value":21.5,"unit":"mm"}""", "EU"))[0];

        Assert.False(judgement.GetProperty("judged").GetBoolean());
        Assert.Contains("limit", judgement.GetProperty("note").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Judge_ManyFindings_OneEntryEachInOrder()
    {
        var judgements = await JudgeAsync(
            """
            {"check":"coolant-condition","observation":"rusty"},{"check":"coolant-condition","observation":"clean"},
            {"check":"damper-leak","position":"rear-left","observation":"leak"}
            """, "US");

        Assert.Equal(["coolant-condition", "coolant-condition", "damper-leak"], judgements.Select(one => one.GetProperty("check").GetString()));
        Assert.Equal("none", judgements[1].GetProperty("deficiency").GetString());
    }

    [Fact]
    public async Task Judge_UnknownMember_IsRefusedAsInAdvice()
    {
        using var response = await service.Client.PostAsync("/v1/judgements", RunningService.Json("""{"vehicle":{},"finding":[]}"""));

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }

    private async Task<List<System.Text.Json.JsonElement>> JudgeAsync(string findings, string jurisdiction)
    {
        var answer = await service.AskAsync("/v1/judgements", $$"""{"asOf":"2026-03-01","jurisdiction":"{{jurisdiction}}","vehicle":{"modelYear":2012},"findings":[{{findings}}]}""");
        Assert.Equal("2026-03-01", answer.GetProperty("asOf").GetString());
        Assert.StartsWith("sha256:", answer.GetProperty("ruleSet").GetProperty("revision").GetString(), StringComparison.Ordinal);
        return [.. answer.GetProperty("judgements").EnumerateArray()];
    }
}
