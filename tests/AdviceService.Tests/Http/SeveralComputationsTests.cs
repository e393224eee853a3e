using System.Text.Json;

namespace AdviceService.Tests.Http;

/// <summary>A finding goes through every computation that its check names and for which it carries the inputs.</summary>
[Collection(Served.ByHttp)]
public class SeveralComputationsTests(RunningService service)
{
    /// <summary>SAE J300 (10.5 mm²/s, 5500 mPa·s at -30, 20000 at -35, 3.1 at high shear: 5W-30), ASTM D2270 (53.47, 7.80: index 111) and D341
    /// (32 at 40, 5.4 at 100 °C: 8.5 at 80 °C), Stokes (1.2372 Pa·s); a sensor cell of 700 °C and 450 mV has 1e-10 atm by Nernst's equation.</summary>
    [Theory]
    [InlineData("engine-oil-sample", "named-grade", """{"viscosityAt100":{"value":7.80,"unit":"mm2/s"},"viscosityAt40":{"value":53.47,"unit":"cSt"}}""", "viscosity-index", "viscosityIndex", 111, 0)]
    [InlineData("engine-oil-sample", "named-grade", """{"measured":[{"degC":40,"mm2s":32},{"degC":100,"mm2s":5.4}],"temperature":{"value":80,"unit":"degC"}}""", "viscosity-at-temperature", "viscosity", 8.533, 0.001)]
    [InlineData("engine-oil-sample", "named-grade", """{"radius":{"value":1.85,"unit":"mm"},"ballDensity":{"value":7729.5,"unit":"kg/m3"},"oilDensity":{"value":1260,"unit":"kg/m3"},"speed":{"value":3.9,"unit":"cm/s"}}""", "falling-ball-viscosity", "viscosity", 1237.2, 0.5)]
    [InlineData("upstream-sensor-live", "follows", """{"temperature":{"value":700,"unit":"degC"},"oxygen":0.01}""", "oxygen-cell", "voltage", 63.8, 0.05)]
    [InlineData("upstream-sensor-live", "rich", """{"temperature":{"value":700,"unit":"degC"},"oxygen":1e-10}""", "oxygen-cell", "voltage", 450, 0.5)]
    [InlineData("upstream-sensor-live", "rich", """{"fuel":"gasoline","airFuelRatio":13.23}""", "air-fuel-ratio", "lambda", 0.9, 0.001)]
    [InlineData("damper-swing-record", "swings-on", """{"first":{"value":20,"unit":"mm"},"last":{"value":10,"unit":"mm"},"cycles":1}""", "damper-decrement", "dampingRatio", 0.1097, 0.0001)]
    [InlineData("damper-swing-record", "swings-on", """{"mass":{"value":8,"unit":"kg"},"stiffness":{"value":5400,"unit":"N/m"},"damping":{"value":40,"unit":"N.s/m"}}""", "damping-ratio", "dampingRatio", 0.0962, 0.0001)]
    [InlineData("coolant-condition", "clean", """{"glycol":"ethylene","concentration":{"value":50,"unit":"percent"}}""", "coolant-freeze-point", "freezesAt", -37.0, 0.05)]
    [InlineData("coolant-condition", "clean", """{"capacity":{"value":8,"unit":"L"},"present":{"value":30,"unit":"percent"},"target":{"value":50,"unit":"percent"}}""", "coolant-drain-and-fill", "replace", 2.286, 0.001)]
    public async Task Judge_Inputs_GoThroughTheirComputationAlone(string check, string seen, string with, string computation, string result, double expected, double within)
    {
        var arithmetic = await ArithmeticAsync($$"""{"check":"{{check}}","observation":"{{seen}}","with":{{with}}}""");

        var one = arithmetic.Single(one => one.GetProperty("computation").GetString() == computation);
        Assert.Equal(expected, Value(one, result), within);
    }

    [Fact]
    public async Task Judge_OilSample_HasGradeAndIndex()
    {
        var arithmetic = await ArithmeticAsync("""
            {"check":"engine-oil-sample","observation":"named-grade","with":{"viscosityAt100":{"value":10.5,"unit":"mm2/s"},"viscosityAt40":{"value":63,"unit":"mm2/s"},
             "highShearViscosity":{"value":3.1,"unit":"mPa.s"},"cranking":[{"degC":-30,"mPas":5500}],"pumping":[{"degC":-35,"mPas":20000}]}}
            """);

        Assert.Equal(["oil-grade", "viscosity-index"], arithmetic.Select(one => one.GetProperty("computation").GetString()));
        Assert.Equal("5W-30", arithmetic[0].GetProperty("results")[0].GetProperty("text").GetString());
    }

    [Fact]
    public async Task Judge_SensorTraceWithMixture_HasSwitchingAndLambda()
    {
        var trace = string.Join(',', Enumerable.Range(0, 101).Select(step => FormattableString.Invariant($$"""{"seconds":{{step / 10.0}},"volts":{{(step / 5 % 2 == 0 ? 0.1 : 0.8)}}}""")));
        var arithmetic = await ArithmeticAsync($$$"""{"check":"upstream-sensor-live","observation":"follows","with":{"trace":[{{{trace}}}],"fuel":"gasoline","lambda":1.01}}""");

        Assert.Equal(["oxygen-sensor-trace", "air-fuel-ratio"], arithmetic.Select(one => one.GetProperty("computation").GetString()));
        Assert.Equal("switching", arithmetic[0].GetProperty("verdict").GetString());
        Assert.Equal(14.847, Value(arithmetic[1], "airFuelRatio"), 0.001);
    }

    /// <summary>Two swings beside the count: the count says 2 rebounds, the amplitudes a ratio of 0.1097 (a textbook's two to one).</summary>
    [Fact]
    public async Task Judge_ReboundsWithTwoSwings_HasBoth()
    {
        var arithmetic = await ArithmeticAsync("""
            {"check":"damper-rebound","position":"front-left","value":2,"unit":"count","with":{"first":{"value":2,"unit":"in"},"last":{"value":1,"unit":"in"},"cycles":1}}
            """);

        Assert.Equal(["damper-rebounds", "damper-decrement"], arithmetic.Select(one => one.GetProperty("computation").GetString()));
        Assert.Equal(0.1097, Value(arithmetic[1], "dampingRatio"), 0.0001);
        Assert.Equal("weak", arithmetic[1].GetProperty("verdict").GetString());
    }

    /// <summary>49 CFR 571.138 S4.2(a): 35 psi on the placard, the lamp comes on at 26.25.</summary>
    [Fact]
    public async Task Judge_PressureWithPlacard_SaysWhereTheLampComesOn()
    {
        var arithmetic = await ArithmeticAsync("""{"check":"tyre-pressure","position":"front-left","value":30,"unit":"psi","with":{"placard":{"value":35,"unit":"psi"}}}""");

        Assert.Equal(26.25 * 6.894757, Value(Assert.Single(arithmetic), "warnsAt"), 0.01);
    }

    private static double Value(JsonElement arithmetic, string result) =>
        arithmetic.GetProperty("results").EnumerateArray().Single(one => one.GetProperty("name").GetString() == result).GetProperty("value").GetDouble();

    private async Task<JsonElement[]> ArithmeticAsync(string finding) =>
        [.. (await service.AskAsync("/v1/judgements", $$"""{"asOf":"2026-03-01","vehicle":{},"findings":[{{finding}}]}""")).GetProperty("judgements")[0].GetProperty("arithmetic").EnumerateArray()];
}
