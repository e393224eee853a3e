using System.Text.Json;

namespace AdviceService.Tests.Http;

/// <summary>What was read at another temperature than that of the limit is judged by what would have been read there.</summary>
[Collection(Served.ByHttp)]
public class JudgedAtTemperatureTests(RunningService service)
{
    /// <summary>Load test and cranking: BCI table, 9.6 V at 70 °F, 8.9 V at 20 °F. Acid: 0.004 for each 10 °F from 80 °F (TM 5-4210-230-14&amp;P-1).
    /// Charge: 6 cells at 0.2 mV/K (handbooks of lead-acid batteries). Pressure: ideal gas.</summary>
    [Theory]
    [InlineData("cranking-voltage", "9.2", "V", """{"temperature":{"value":20,"unit":"degF"}}""", 9.9, "none")]
    [InlineData("cranking-voltage", "9.2", "V", null, 9.2, "minor")]
    [InlineData("cranking-voltage", "8.8", "V", """{"temperature":{"value":20,"unit":"degF"}}""", 9.5, "minor")]
    [InlineData("battery-acid-density", "1.250", "kg/L", """{"temperature":{"value":20,"unit":"degF"}}""", 1.226, "none")]
    [InlineData("battery-acid-density", "1.240", "kg/L", """{"temperature":{"value":20,"unit":"degF"}}""", 1.216, "minor")]
    [InlineData("battery-acid-density", "1.220", "kg/L", """{"temperature":{"value":100,"unit":"degF"}}""", 1.228, "none")]
    [InlineData("battery-open-circuit-voltage", "12.38", "V", """{"temperature":{"value":-10,"unit":"degC"}}""", 12.424, "none")]
    [InlineData("battery-open-circuit-voltage", "12.38", "V", null, 12.38, "minor")]
    [InlineData("tyre-pressure", "240", "kPa", """{"temperature":{"value":50,"unit":"degC"},"otherTemperature":{"value":20,"unit":"degC"}}""", 208.314, "none")]
    public async Task Judge_ReadElsewhere_IsHeldAgainstTheLimitAtItsTemperature(string check, string value, string unit, string? with, double judged, string deficiency)
    {
        var carried = with is null ? "" : $",\"with\":{with}";
        var judgement = await JudgeAsync($$"""{"check":"{{check}}","value":{{value}},"unit":"{{unit}}"{{carried}}}""");

        Assert.Equal(judged, judgement.GetProperty("value").GetDouble(), 0.002);
        Assert.Equal(deficiency, judgement.GetProperty("deficiency").GetString());
        Assert.Equal(with is not null, judgement.GetProperty("note").GetString()?.Contains("at the temperature of the limit", StringComparison.Ordinal) == true);
    }

    /// <summary>A tyre that shows the placard when hot lacks air when cold.</summary>
    [Fact]
    public async Task Judge_HotTyreAgainstThePlacard_IsShortOfAir()
    {
        const string Hot = """{"check":"tyre-pressure","value":35,"unit":"psi","limit":{"minimum":35,"unit":"psi"}""";

        Assert.Equal("none", (await JudgeAsync(Hot + "}")).GetProperty("deficiency").GetString());
        var hot = await JudgeAsync(Hot + ""","with":{"temperature":{"value":104,"unit":"degF"},"otherTemperature":{"value":68,"unit":"degF"}}}""");
        Assert.Equal("minor", hot.GetProperty("deficiency").GetString());
        Assert.Equal(31.83, hot.GetProperty("value").GetDouble(), 0.01);
    }

    private async Task<JsonElement> JudgeAsync(string finding) =>
        (await service.AskAsync("/v1/judgements", $$"""{"asOf":"2026-03-01","vehicle":{},"findings":[{{finding}}]}""")).GetProperty("judgements")[0];
}
