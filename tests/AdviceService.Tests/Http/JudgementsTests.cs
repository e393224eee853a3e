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

    /// <summary>Impossible values, missing units and units of something else are errors that say what would be right.</summary>
    [Theory]
    [InlineData("""{"check":"brake-pad-thickness","value":-1,"unit":"mm"}""", 422, "/findings/0/value", "30")]
    [InlineData("""{"check":"battery-open-circuit-voltage","value":300,"unit":"V"}""", 422, "/findings/0/value", "16")]
    [InlineData("""{"check":"tyre-tread-depth","value":25,"unit":"mm"}""", 422, "/findings/0/value", "20")]
    [InlineData("""{"check":"tyre-tread-depth","value":40,"unit":"32nds"}""", 422, "/findings/0/value", "20")]
    [InlineData("""{"check":"brake-pad-thickness","value":4}""", 400, "/findings/0/unit", "given")]
    [InlineData("""{"check":"brake-pad-thickness","value":4,"unit":"km"}""", 422, "/findings/0/unit", "mm")]
    [InlineData("""{"check":"brake-pad-thickness","value":4,"unit":"mm","limit":{"minimum":3}}""", 400, "/findings/0/limit/unit", "given")]
    [InlineData("""{"check":"damper-rebound","value":2.5,"unit":"count"}""", 422, "/findings/0/value", "whole")]
    [InlineData("""{"check":"tyre-tread-depth","value":9,"unit":"mm","limit":{"minimum":-3,"unit":"mm"}}""", 422, "/findings/0/limit/minimum", "20")]
    [InlineData("""{"check":"tyre-tread-depth","value":9,"unit":"mm","limit":{"minimum":99,"unit":"32nds"}}""", 422, "/findings/0/limit/minimum", "20")]
    [InlineData("""{"check":"coolant-condition","observation":"brown"}""", 422, "/findings/0/observation", "rusty")]
    public async Task Judge_ImpossibleOrUnclear_IsRefusedWithPointerAndRange(string finding, int status, string pointer, string says)
    {
        using var response = await service.Client.PostAsync("/v1/judgements", RunningService.Json($$"""{"vehicle":{},"findings":[{{finding}}]}"""));

        var error = System.Text.Json.JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors")[0];
        Assert.Equal((status, pointer), ((int)response.StatusCode, error.GetProperty("pointer").GetString()));
        Assert.Contains(says, error.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("brake-force", "3", "kN", "674.4", "lbf")]
    [InlineData("coolant-freeze-point", "-10", "°C", "14", "°F")]
    [InlineData("coolant-freeze-point", "-10", "degC", "14", "degF")]
    [InlineData("tyre-pressure", "2", "bar", "200", "kPa")]
    [InlineData("battery-open-circuit-voltage", "12.3", "V", "12300", "mV")]
    [InlineData("tyre-tread-depth", "0.125", "in", "4", "32nds")]
    public async Task Judge_OneValueInTwoUnits_SameJudgement(string check, string value, string unit, string other, string otherUnit)
    {
        var judgements = await JudgeAsync($$"""{"check":"{{check}}","value":{{value}},"unit":"{{unit}}"},{"check":"{{check}}","value":{{other}},"unit":"{{otherUnit}}"}""", "EU");

        Assert.Equal(judgements[0].GetProperty("deficiency").ToString(), judgements[1].GetProperty("deficiency").ToString());
        Assert.Equal(judgements[0].GetProperty("margin").ToString(), judgements[1].GetProperty("margin").ToString());
    }

    [Fact]
    public async Task Judge_DangerousPad_SaysStopWithCautionsThatAreExplained()
    {
        var answer = await service.AskAsync("/v1/judgements", """{"jurisdiction":"UK","vehicle":{},"findings":[{"check":"brake-pad-thickness","position":"front-left","value":1.0,"unit":"mm"},{"check":"brake-pad-thickness","position":"front-right","value":9,"unit":"mm"}]}""");

        var judgements = answer.GetProperty("judgements").EnumerateArray().ToList();
        Assert.Equal("stop", answer.GetProperty("driving").GetProperty("advice").GetString());
        Assert.Equal(("stop", "normal"), (judgements[0].GetProperty("driving").GetString(), judgements[1].GetProperty("driving").GetString()));
        Assert.NotEmpty(judgements[0].GetProperty("cautions").EnumerateArray());
        Assert.Empty(judgements[1].GetProperty("cautions").EnumerateArray());
        Assert.Subset(
            answer.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("id").GetString()).ToHashSet(),
            judgements[0].GetProperty("cautions").EnumerateArray().Select(id => id.GetString()).ToHashSet());
        Assert.Equal("front", answer.GetProperty("acrossAxles")[0].GetProperty("position").GetString());
    }

    [Fact]
    public async Task Judge_DangerousOnceAndGoodSince_MayBeDriven()
    {
        var answer = await service.AskAsync(
            "/v1/judgements",
            """
            {"asOf":"2026-03-01","jurisdiction":"UK","vehicle":{},"findings":[
             {"check":"brake-pad-thickness","position":"front-left","value":1.0,"unit":"mm","on":"2026-01-10"},
             {"check":"brake-pad-thickness","position":"front-left","value":11,"unit":"mm","on":"2026-02-10"}]}
            """);

        Assert.Equal("normal", answer.GetProperty("driving").GetProperty("advice").GetString());
        Assert.Equal("dangerous", answer.GetProperty("judgements")[0].GetProperty("deficiency").GetString());
    }

    [Fact]
    public async Task Judge_NoJurisdiction_TakesTheStrictestAndSaysSo()
    {
        var answer = await service.AskAsync("/v1/judgements", """{"vehicle":{},"findings":[{"check":"tyre-tread-depth","value":1.59,"unit":"mm"}]}""");

        Assert.Equal("dangerous", answer.GetProperty("judgements")[0].GetProperty("deficiency").GetString());
        Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), text => text.GetString()!.Contains("jurisdiction", StringComparison.Ordinal));
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
