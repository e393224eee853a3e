using System.Text.Json;
using System.Text.Json.Nodes;

namespace AdviceService.Tests.Http;

/// <summary>The values stored with a trouble code count as findings.</summary>
[Collection(Served.ByHttp)]
public class FreezeFrameTests(RunningService service)
{
    private const string Frame = """
        {"engineSpeed":{"value":720,"unit":"rpm"},"coolantTemperature":{"value":190,"unit":"degF"},"engineLoad":{"value":22,"unit":"%"},
         "shortTermBank1":{"value":9.4,"unit":"%"},"longTermBank1":{"value":14.1,"unit":"percent"}}
        """;

    [Theory]
    [InlineData("/v1/advice", "understood")]
    [InlineData("/v1/inspection", "understood")]
    [InlineData("/v1/judgements", null)]
    [InlineData("/v1/intake", null)]
    public async Task Ask_WithFreezeFrame_JudgesItAfterTheFindingsAndSaysWhatIsLeft(string route, string? within)
    {
        var answer = await service.AskAsync(route, Body($$""", "findings": [{"check":"brake-pad-thickness","value":8,"unit":"mm"}], "freezeFrame": {{Frame}}"""));

        var judgements = answer.GetProperty("judgements").EnumerateArray().ToList();
        Assert.Equal(["brake-pad-thickness", "fuel-trim-total"], judgements.Select(one => one.GetProperty("check").GetString()));
        Assert.Equal([[], ["shortTermBank1", "longTermBank1"]], judgements.Select(one => one.GetProperty("fromFreezeFrame").EnumerateArray().Select(member => member.GetString())));
        Assert.Equal((23.5, "minor"), (judgements[1].GetProperty("value").GetDouble(), judgements[1].GetProperty("deficiency").GetString()));
        var left = (within is null ? answer : answer.GetProperty(within)).GetProperty("freezeFrameLeft").EnumerateArray().Select(one => one.GetProperty("member").GetString());
        Assert.Equal(["engineLoad"], left);
    }

    /// <summary>It is evidence like the same value given as a finding.</summary>
    [Fact]
    public async Task Advise_WithFreezeFrame_SuspectsAsWithTheFinding()
    {
        var framed = await service.AdviseAsync(Body($$""", "freezeFrame": {{Frame}}"""));
        var found = await service.AdviseAsync(Body(""", "findings": [{"check":"fuel-trim-total","value":23.5,"unit":"percent"}]"""));
        var without = await service.AdviseAsync(Body(""));

        Assert.True(JsonElement.DeepEquals(found.GetProperty("suspects"), framed.GetProperty("suspects")));
        Assert.False(JsonElement.DeepEquals(without.GetProperty("suspects"), framed.GetProperty("suspects")));
        Assert.True(JsonElement.DeepEquals(found.GetProperty("steps"), framed.GetProperty("steps")));
    }

    [Theory]
    [InlineData("""{}""", "/freezeFrame", "missing-member", 400)]
    [InlineData("""[]""", "/freezeFrame", "wrong-type", 400)]
    [InlineData("""null""", "/freezeFrame", "wrong-type", 400)]
    [InlineData("""{"engineSpeed":720}""", "/freezeFrame/engineSpeed", "wrong-type", 400)]
    [InlineData("""{"engineSpeed":{"value":16385,"unit":"rpm"}}""", "/freezeFrame/engineSpeed/value", "out-of-range", 422)]
    [InlineData("""{"coolantTemperature":{"value":420,"unit":"degF"}}""", "/freezeFrame/coolantTemperature/value", "out-of-range", 422)]
    [InlineData("""{"coolantTemperature":{"value":90,"unit":"V"}}""", "/freezeFrame/coolantTemperature/unit", "unknown-word", 400)]
    [InlineData("""{"coolantTemperature":{"value":90}}""", "/freezeFrame/coolantTemperature/unit", "missing-member", 400)]
    [InlineData("""{"fuelSystemStatus":"open"}""", "/freezeFrame/fuelSystemStatus", "unknown-word", 400)]
    [InlineData("""{"rpm":{"value":720,"unit":"rpm"}}""", "/freezeFrame/rpm", "unknown-member", 400)]
    public async Task Ask_WrongFreezeFrame_NamesTheMember(string frame, string pointer, string code, int status)
    {
        var response = await service.Client.PostAsync("/v1/advice", RunningService.Json(Body($$""", "freezeFrame": {{frame}}""")));

        Assert.Equal(status, (int)response.StatusCode);
        var error = Assert.Single(JsonNode.Parse(await response.Content.ReadAsStringAsync())!["errors"]!.AsArray())!;
        Assert.Equal((pointer, code), (error["pointer"]!.GetValue<string>(), error["code"]!.GetValue<string>()));
    }

    private static string Body(string more) => $$"""{"asOf":"2026-05-01","vehicle":{"modelYear":2014,"fuel":"gasoline"},"troubleCodes":["P0171"]{{more}}}""";
}
