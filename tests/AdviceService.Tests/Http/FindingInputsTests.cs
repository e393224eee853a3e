using System.Text.Json;

namespace AdviceService.Tests.Http;

/// <summary>A finding carries what the arithmetic of its check takes beside the value.</summary>
[Collection(Served.ByHttp)]
public class FindingInputsTests(RunningService service)
{
    /// <summary>Glycol by ASHRAE: 50.6 % by volume at -37.9 °C; brake fluid by 49 CFR 571.116: DOT 4 at 3.7 % water 155 °C; trims: short plus long.</summary>
    [Theory]
    [InlineData("/v1/judgements")]
    [InlineData("/v1/advice")]
    public async Task With_EachKind_GivesTheArithmetic(string route)
    {
        var judged = await JudgedAsync(route, Rows.Select(row => row.Finding));

        foreach (var (row, judgement) in Rows.Zip(judged))
        {
            Assert.True(judgement.GetProperty("arithmetic").GetArrayLength() > 0, row.Finding + judgement);
            var arithmetic = judgement.GetProperty("arithmetic")[0];
            Assert.Equal(row.Verdict, arithmetic.GetProperty("verdict").GetString());
            if (row.Result is { } name)
                Assert.Equal(row.Value, arithmetic.GetProperty("results").EnumerateArray().Single(one => one.GetProperty("name").GetString() == name).GetProperty("value").GetDouble(), 0.05);
        }
    }

    [Theory]
    [InlineData("""{"check":"coolant-freeze-point","value":-20,"unit":"degC"}""", "glycol")]
    [InlineData("""{"check":"brake-fluid-water","value":2,"unit":"percent"}""", "class")]
    [InlineData("""{"check":"brake-fluid-water","value":5,"unit":"percent","with":{"class":"DOT 4"}}""", "3.7")]
    [InlineData("""{"check":"brake-fluid-water","value":2,"unit":"percent","with":{"class":"DOT 5"}}""", "Silicone")]
    [InlineData("""{"check":"fuel-trim-total","value":12,"unit":"percent","with":{"shortTermBank1":{"value":2,"unit":"percent"}}}""", "longTermBank1")]
    public async Task With_TooLittle_IsJudgedByTheLimitAndNoted(string finding, string says)
    {
        var judgement = (await JudgedAsync("/v1/judgements", [finding]))[0];

        Assert.True(judgement.GetProperty("judged").GetBoolean());
        Assert.Empty(judgement.GetProperty("arithmetic").EnumerateArray());
        Assert.Contains(says, judgement.GetProperty("note").GetString(), StringComparison.Ordinal);
    }

    /// <summary>49 CFR 571.116, S5.1.2: wet limits 140 °C of DOT 3, 155 of DOT 4, 180 of DOT 5.1; the class on the cap chooses the limit too.</summary>
    [Theory]
    [InlineData("DOT 3", null, 150, "none", "used")]
    [InlineData("DOT 4", null, 150, "minor", "below-wet-limit")]
    [InlineData("DOT 5.1", null, 170, "minor", "below-wet-limit")]
    [InlineData(null, "dot3", 150, "none", "used")]
    [InlineData(null, "dot4", 230, "none", "as-new")]
    [InlineData("DOT 3", "dot51", 150, "none", "used")]
    public async Task With_ClassOfTheBrakeFluid_ChoosesLimitAndArithmetic(string? carried, string? described, double degC, string deficiency, string verdict)
    {
        var with = carried is null ? "" : $$"""
            ,"with":{"class":"{{carried}}"}
            """;
        var vehicle = described is null ? "" : $$"""
            "brakes":{"fluid":"{{described}}"}
            """;
        var answer = await service.AskAsync("/v1/judgements", FormattableString.Invariant($$"""{"vehicle":{{{vehicle}}},"findings":[{"check":"brake-fluid-boiling-point","value":{{degC}},"unit":"degC"{{with}}}]}"""));

        var judgement = answer.GetProperty("judgements")[0];
        Assert.Equal(deficiency, judgement.GetProperty("deficiency").GetString());
        Assert.Equal(verdict, judgement.GetProperty("arithmetic")[0].GetProperty("verdict").GetString());
    }

    [Fact]
    public async Task Catalogue_Check_NamesWhatAFindingMayCarry()
    {
        var check = JsonDocument.Parse(await service.Client.GetStringAsync("/v1/catalogue/checks/coolant-freeze-point")).RootElement;

        Assert.Equal("glycol", Assert.Single(check.GetProperty("with").EnumerateArray()).GetProperty("name").GetString());
    }

    [Theory]
    [InlineData("""{"check":"coolant-freeze-point","value":-20,"unit":"degC","with":{"glycol":"etylene"}}""", 400, "/findings/0/with/glycol")]
    [InlineData("""{"check":"coolant-freeze-point","value":-20,"unit":"degC","with":{"glycole":"ethylene"}}""", 400, "/findings/0/with/glycole")]
    [InlineData("""{"check":"coolant-freeze-point","value":-20,"unit":"degC","with":["ethylene"]}""", 400, "/findings/0/with")]
    [InlineData("""{"check":"brake-fluid-water","value":2,"unit":"percent","with":{"class":"DOT 4","boilingPoint":180}}""", 400, "/findings/0/with/boilingPoint")]
    [InlineData("""{"check":"brake-fluid-water","value":2,"unit":"percent","with":{"class":"DOT 4","boilingPoint":{"value":900,"unit":"degC"}}}""", 422, "/findings/0/with/boilingPoint/value")]
    [InlineData("""{"check":"brake-fluid-water","value":2,"unit":"percent","with":{"class":"DOT 4","boilingPoint":{"value":180}}}""", 400, "/findings/0/with/boilingPoint/unit")]
    [InlineData("""{"check":"compression-spread","value":10,"unit":"percent","with":{"pressures":{"values":[900],"unit":"kPa"}}}""", 422, "/findings/0/with/pressures/values")]
    [InlineData("""{"check":"brake-pad-thickness","value":5,"unit":"mm","with":{"glycol":"ethylene"}}""", 422, "/findings/0/with")]
    public async Task With_Wrong_NamesTheField(string finding, int status, string pointer)
    {
        using var response = await service.Client.PostAsync("/v1/judgements", RunningService.Json($$"""{"vehicle":{},"findings":[{{finding}}]}"""));

        var error = JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors")[0];
        Assert.Equal((status, pointer), ((int)response.StatusCode, error.GetProperty("pointer").GetString()));
    }

    private static readonly (string Finding, string? Verdict, string? Result, double Value)[] Rows =
    [
        ("""{"check":"coolant-freeze-point","value":-37.9,"unit":"degC","with":{"glycol":"ethylene"}}""", "in-range", "concentration", 50.6),
        ("""{"check":"coolant-freeze-point","value":-4,"unit":"degF","with":{"glycol":"propylene"}}""", "too-thin", "concentration", 38.45),
        ("""{"check":"brake-fluid-water","value":3.7,"unit":"percent","with":{"class":"DOT 4"}}""", null, "estimatedBoilingPoint", 155),
        ("""{"check":"brake-fluid-boiling-point","value":311,"unit":"degF","with":{"class":"DOT 3"}}""", "used", "marginOverWetLimit", 15),
        ("""{"check":"fuel-trim-total","value":18,"unit":"percent","with":{"shortTermBank1":{"value":6,"unit":"percent"},"longTermBank1":{"value":12,"unit":"percent"},"shortTermBank2":{"value":1,"unit":"%"},"longTermBank2":{"value":2,"unit":"%"}}}""", "lean-bank-1", "totalBank1", 18),
        ("""{"check":"fuel-trim-look","observation":"adds-idle","with":{"shortTermBank1":{"value":6,"unit":"percent"},"longTermBank1":{"value":12,"unit":"percent"},"totalAtCruiseBank1":{"value":2,"unit":"percent"}}}""", "lean-at-idle", "totalBank1", 18),
        ("""{"check":"battery-open-circuit-voltage","value":12.4,"unit":"V","with":{"temperature":{"value":80,"unit":"degF"}}}""", "recharge", "stateOfCharge", 69),
        ("""{"check":"battery-acid-density","value":1.250,"unit":"kg/L","with":{"temperature":{"value":20,"unit":"degF"}}}""", "charged", "gravityAt80DegF", 1.226),
        ("""{"check":"compression-spread","value":33,"unit":"percent","with":{"pressures":{"values":[150,148,100,149],"unit":"psi"}}}""", "uneven", "lowestOfHighest", 66.67),
        ("""{"check":"tyre-tread-depth","value":4,"unit":"32nds","with":{"newDepth":{"value":10,"unit":"32nds"},"minimum":{"value":2,"unit":"32nds"}}}""", null, "worn", 75),
        ("""{"check":"driveline-angle","value":3,"unit":"deg","with":{"secondAngle":{"value":3,"unit":"deg"}}}""", "smooth", null, 0),
        ("""{"check":"tyre-age","observation":"over-ten-years","with":{"code":"0301"}}""", "replace", null, 0),
    ];

    private async Task<JsonElement[]> JudgedAsync(string route, IEnumerable<string> findings) =>
        [.. (await service.AskAsync(route, $$"""{"asOf":"2026-03-01","vehicle":{},"findings":[{{string.Join(',', findings)}}]}""")).GetProperty("judgements").EnumerateArray()];
}
