using System.Text.Json;

namespace AdviceService.Tests.Http;

/// <summary>Findings of advice go through the arithmetic and the projection that belong to them.</summary>
[Collection(Served.ByHttp)]
public class FindingArithmeticTests(RunningService service)
{
    [Theory]
    [InlineData("battery-open-circuit-voltage", "12400", "mV", "battery-state-of-charge", "stateOfCharge", 69)]
    [InlineData("starting-cable-drop", "0.8", "V", "voltage-drop", "most", 0.5)]
    [InlineData("cranking-voltage", "9.2", "V", "cranking-voltage", "least", 9.6)]
    public async Task Advise_Measured_GivesTheArithmetic(string check, string value, string unit, string computation, string result, double expected)
    {
        var arithmetic = (await JudgedAsync($$"""{"check":"{{check}}","value":{{value}},"unit":"{{unit}}"}"""))[0].GetProperty("arithmetic")[0];

        Assert.Equal(computation, arithmetic.GetProperty("computation").GetString());
        var found = arithmetic.GetProperty("results").EnumerateArray().Single(one => one.GetProperty("name").GetString() == result);
        Assert.Equal(expected, found.GetProperty("value").GetDouble(), 0.5);
    }

    /// <summary>What a verdict means stands in the rules, and names checks that exist.</summary>
    [Fact]
    public async Task Advise_ManyRebounds_SaysWhereToLook()
    {
        var arithmetic = (await JudgedAsync("""{"check":"damper-rebound","position":"front-left","value":4,"unit":"count"}"""))[0].GetProperty("arithmetic")[0];

        Assert.Equal("weak", arithmetic.GetProperty("verdict").GetString());
        var meaning = Assert.Single(arithmetic.GetProperty("meanings").EnumerateArray());
        Assert.Contains("damper-leak", meaning.GetProperty("checks").EnumerateArray().Select(check => check.GetString()));
    }

    /// <summary>A finding carries what its computation needs. Expected: by hand (δ = ln 2, load indices of ISO 4000-1, viscosity index of ASTM D2270's first example).</summary>
    [Theory]
    [InlineData("engine-oil-sample", "named-grade", """{"viscosityAt100":{"value":8.86,"unit":"cSt"},"viscosityAt40":{"value":73.30,"unit":"cSt"}}""", "viscosity-index", "viscosityIndex", 92, null)]
    [InlineData("tyre-load-rating", "carries", """{"loadIndex":91,"axleLoad":{"value":1230,"unit":"kg"}}""", "tyre-load-and-speed", "axleCapacity", 1230, "carries")]
    [InlineData("tyre-load-rating", "too-weak", """{"loadIndex":91,"axleLoad":{"value":1231,"unit":"kg"}}""", "tyre-load-and-speed", "axleCapacity", 1230, "too-weak")]
    public async Task Advise_FindingThatCarriesInputs_GivesTheArithmetic(
        string check, string seen, string with, string computation, string result, double expected, string? verdict)
    {
        var arithmetic = (await JudgedAsync($$"""{"check":"{{check}}","observation":"{{seen}}","with":{{with}}}"""))[0].GetProperty("arithmetic")
            .EnumerateArray().Single(one => one.GetProperty("computation").GetString() == computation);

        var found = arithmetic.GetProperty("results").EnumerateArray().Single(one => one.GetProperty("name").GetString() == result);
        Assert.Equal(expected, found.GetProperty("value").GetDouble(), 0.5);
        Assert.Equal(verdict, arithmetic.GetProperty("verdict").GetString());
    }

    /// <summary>A cosine of 1 Hz that halves in each cycle has the decrement ln 2.</summary>
    [Fact]
    public async Task Advise_TraceOfACorner_GivesTheDecrement()
    {
        var points = string.Join(',', Enumerable.Range(0, 401).Select(step => step / 50.0).Select(time =>
            FormattableString.Invariant($$"""{"seconds":{{time}},"millimetres":{{Math.Round(50 * Math.Pow(2, -time) * Math.Cos(2 * Math.PI * time), 4)}}}""")));

        var arithmetic = (await JudgedAsync($$$"""{"check":"damper-swing-record","position":"front-left","observation":"swings-on","with":{"trace":[{{{points}}}]}}"""))[0]
            .GetProperty("arithmetic")[0];

        Assert.Equal("weak", arithmetic.GetProperty("verdict").GetString());
        var decrement = arithmetic.GetProperty("results").EnumerateArray().Single(one => one.GetProperty("name").GetString() == "decrement");
        Assert.Equal(Math.Log(2), decrement.GetProperty("value").GetDouble(), 0.02);
    }

    [Fact]
    public async Task Advise_ThreeReadings_ProjectsBesideTheLast()
    {
        static string Reading(double value, string on, int km) => FormattableString.Invariant(
            $$$"""{"check":"tyre-tread-depth","position":"front-left","value":{{{value}}},"unit":"mm","on":"{{{on}}}","odometer":{"value":{{{km}}},"unit":"km"},"limit":{"minimum":1.6,"unit":"mm"}}""");

        var judged = await JudgedAsync($"{Reading(4.9, "2026-02-01", 30_000)},{Reading(8, "2024-03-01", 0)},{Reading(6.4, "2025-03-01", 16_000)}");

        var projection = judged[0].GetProperty("projection");
        Assert.Equal("projected", projection.GetProperty("status").GetString());
        Assert.InRange(projection.GetProperty("expected").GetProperty("odometer").GetProperty("value").GetDouble(), 60_000, 64_000);
        Assert.Equal(JsonValueKind.Null, judged[1].GetProperty("projection").ValueKind);
        Assert.Equal(JsonValueKind.Null, judged[2].GetProperty("projection").ValueKind);
    }

    private async Task<JsonElement> JudgedAsync(string findings) =>
        (await service.AdviseAsync($$"""{"asOf":"2026-03-01","vehicle":{},"findings":[{{findings}}]}""")).GetProperty("judgements");
}
