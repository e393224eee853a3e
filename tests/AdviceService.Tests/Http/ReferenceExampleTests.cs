using System.Text.Json;

namespace AdviceService.Tests.Http;

/// <summary>
/// Twenty-two worked examples of standards, regulations and textbooks, each by its name, asked as a caller would. Not asked through HTTP are three
/// that are methods of the service and no question of a caller: the order of a repair sequence (Ranking/PublishedSequenceTests), noisy-OR and the
/// Bayes network (Inference/PublishedProbabilityTests), each against the same published numbers; and the certified regression of NIST Norris,
/// whose negative readings no part has (Wear/LeastSquaresLineTests). Of the steering example the rotation of 14 and 30 degrees is for commercial vehicles only, which have
/// another law and are none of ours.
/// </summary>
[Collection(Served.ByHttp)]
public class ReferenceExampleTests(RunningService service)
{
    private const double KilopascalsInPsi = 6.894757;
    private const double MetresInFoot = 0.3048;

    [Theory]
    [InlineData("ASTM D2270 viscosity index", "viscosity-index", """{"viscosityAt40":{"value":73.30,"unit":"cSt"},"viscosityAt100":{"value":8.86,"unit":"cSt"}}""", "viscosityIndex", 92, 0)]
    [InlineData("ASTM D2270 viscosity index", "viscosity-index", """{"viscosityAt40":{"value":22.83,"unit":"cSt"},"viscosityAt100":{"value":5.05,"unit":"cSt"}}""", "viscosityIndex", 156, 0)]
    [InlineData("ASTM D2270 viscosity index", "viscosity-index", """{"viscosityAt40":{"value":53.47,"unit":"cSt"},"viscosityAt100":{"value":7.80,"unit":"cSt"}}""", "viscosityIndex", 111, 0)]
    [InlineData("ASTM D2270 viscosity index", "viscosity-index", """{"viscosityAt40":{"value":1000,"unit":"cSt"},"viscosityAt100":{"value":100,"unit":"cSt"}}""", "viscosityIndex", 193, 0)]
    [InlineData("ASTM D341 viscosity-temperature line", "viscosity-at-temperature", """{"measured":[{"degC":40,"mm2s":32},{"degC":100,"mm2s":5.4}],"temperature":{"value":80,"unit":"degC"}}""", "viscosity", 8.5, 0.05)]
    [InlineData("ASTM D341 A, published with 273 for 273.15", "viscosity-at-temperature", """{"measured":[{"degC":40,"mm2s":32},{"degC":100,"mm2s":5.4}],"temperature":{"value":80,"unit":"degC"}}""", "a", 9.5259, 0.006)]
    [InlineData("American Samoa stopping table, 10 mph", "stopping-distance", """{"speed":{"value":10,"unit":"mph"},"deceleration":{"value":11.6,"unit":"ft/s2"}}""", "distance", 9.3 * MetresInFoot, 0.012)]
    [InlineData("American Samoa stopping table, 15 mph", "stopping-distance", """{"speed":{"value":15,"unit":"mph"},"deceleration":{"value":11.6,"unit":"ft/s2"}}""", "distance", 20.8 * MetresInFoot, 0.026)]
    [InlineData("American Samoa stopping table, 20 mph", "stopping-distance", """{"speed":{"value":20,"unit":"mph"},"deceleration":{"value":11.6,"unit":"ft/s2"}}""", "distance", 37.0 * MetresInFoot, 0.046)]
    [InlineData("American Samoa stopping table, 25 mph", "stopping-distance", """{"speed":{"value":25,"unit":"mph"},"deceleration":{"value":11.6,"unit":"ft/s2"}}""", "distance", 58.0 * MetresInFoot, 0.071)]
    [InlineData("American Samoa stopping table, 30 mph", "stopping-distance", """{"speed":{"value":30,"unit":"mph"},"deceleration":{"value":11.6,"unit":"ft/s2"}}""", "distance", 83.3 * MetresInFoot, 0.102)]
    [InlineData("67 Pa. Code 175 Table I", "stopping-distance", """{"speed":{"value":20,"unit":"mph"},"deceleration":{"value":21,"unit":"ft/s2"}}""", "efficiency", 65.2, 0.1)]
    [InlineData("BCI open-circuit voltage", "battery-state-of-charge", """{"voltage":{"value":12.4,"unit":"V"},"temperature":{"value":80,"unit":"degF"}}""", "stateOfCharge", 69, 0.5)]
    [InlineData("BCI specific gravity in the cold", "battery-specific-gravity", """{"gravity":1.250,"temperature":{"value":20,"unit":"degF"}}""", "gravityAt80DegF", 1.226, 1e-6)]
    [InlineData("BCI specific gravity in the heat", "battery-specific-gravity", """{"gravity":1.235,"temperature":{"value":100,"unit":"degF"}}""", "gravityAt80DegF", 1.243, 1e-6)]
    [InlineData("BCI load test", "battery-load-test", """{"voltage":{"value":9.5,"unit":"V"},"temperature":{"value":50,"unit":"degF"}}""", "least", 9.4, 1e-6)]
    [InlineData("ASHRAE glycol", "coolant-freeze-point", """{"glycol":"ethylene","concentration":{"value":50,"unit":"percent"}}""", "freezesAt", -37.0, 0.05)]
    [InlineData("ASHRAE glycol back", "coolant-concentration", """{"glycol":"ethylene","freezesAt":{"value":-20,"unit":"degC"}}""", "concentration", 35.2, 0.05)]
    [InlineData("SAE J1979 fuel trim byte", "fuel-trim-byte", """{"value":160}""", "trim", 25, 0)]
    [InlineData("SAE J1979 fuel trim byte", "fuel-trim-byte", """{"value":112}""", "trim", -12.5, 0)]
    [InlineData("SAE J1979 fuel trim byte", "fuel-trim-byte", """{"value":255}""", "trim", 99.22, 0.005)]
    [InlineData("Brettschneider lambda", "exhaust-lambda", """{"carbonMonoxide":{"value":1.2,"unit":"%"},"carbonDioxide":{"value":13.5,"unit":"%"},"hydrocarbonsPpm":45,"oxygen":{"value":0.3,"unit":"%"}}""", "lambda", 0.976, 0.0005)]
    [InlineData("Nernst, rich", "oxygen-cell", """{"temperature":{"value":700,"unit":"degC"},"oxygen":1e-10}""", "voltage", 450, 0.5)]
    [InlineData("Nernst, lean", "oxygen-cell", """{"temperature":{"value":700,"unit":"degC"},"oxygen":0.01}""", "voltage", 63.8, 0.05)]
    [InlineData("Nernst, slope", "oxygen-cell", """{"temperature":{"value":700,"unit":"degC"},"oxygen":0.01}""", "perDecade", 48.27, 0.005)]
    [InlineData("NIST Weibull with censoring", "part-life", NistLives, "shape", 1.7208, 0.0001)]
    [InlineData("NIST Weibull with censoring", "part-life", NistLives, "scale", 606.5280, 0.001)]
    [InlineData("NIST Weibull with censoring", "part-life", NistLives, "mean", 540.737, 0.001)]
    [InlineData("NIST Weibull with censoring", "part-life", NistLives, "deviation", 323.806, 0.001)]
    [InlineData("Khurmi and Gupta damping", "damping-ratio", Khurmi, "criticalDamping", 416, 0.5)]
    [InlineData("Khurmi and Gupta damping", "damping-ratio", Khurmi, "dampingRatio", 0.096, 0.0005)]
    [InlineData("Khurmi and Gupta damping", "damping-ratio", Khurmi, "decrement", 0.607, 0.0005)]
    [InlineData("Stokes' falling ball", "falling-ball-viscosity", """{"radius":{"value":1.85,"unit":"mm"},"ballDensity":{"value":7729.5,"unit":"kg/m3"},"oilDensity":{"value":1260,"unit":"kg/m3"},"speed":{"value":3.9,"unit":"cm/s"}}""", "viscosity", 1237.2, 0.1)]
    [InlineData("Tyre 245/55R18", "tyre-size", """{"size":"245/55R18"}""", "diameter", 726.7, 0.05)]
    [InlineData("ISO 4000-1 load index", "tyre-load-and-speed", """{"loadIndex":91}""", "load", 615, 0)]
    [InlineData("49 CFR 574.5 week", "tyre-age", """{"code":"0301"}""", "week", 3, 0)]
    [InlineData("49 CFR 571.138 S4.2", "tyre-warning-pressure", """{"placard":{"value":35,"unit":"psi"}}""", "warnsAt", 26.25 * KilopascalsInPsi, 0.001)]
    [InlineData("Compression, 75 %", "compression", """{"pressures":{"values":[150,148],"unit":"psi"}}""", "leastByStricterRule", 112.5 * KilopascalsInPsi, 0.005)]
    [InlineData("Compression, 70 %", "compression", """{"pressures":{"values":[150,148],"unit":"psi"}}""", "leastByMilderRule", 105 * KilopascalsInPsi, 0.005)]
    [InlineData("Compression, never below 100 psi", "compression", """{"pressures":{"values":[120,118],"unit":"psi"}}""", "leastByMilderRule", 100 * KilopascalsInPsi, 0.6)]
    [InlineData("Directive 2014/47/EU risk rating", "operator-risk-rating", """{"dangerous":[0,1,0],"major":[1,0,0],"minor":[2,0,3],"checks":[2,1,1]}""", "rating", 29.75, 0)]
    public async Task Compute_Example_GivesItsNumber(string example, string computation, string body, string result, double expected, double within)
    {
        var found = (await ResultAsync(computation, body, result)).GetProperty("value").GetDouble();

        Assert.True(Math.Abs(found - expected) <= within, $"{example}: {found} instead of {expected}");
    }

    [Theory]
    [InlineData("SAE J300", "oil-grade", """{"viscosityAt100":{"value":10.5,"unit":"cSt"},"highShearViscosity":{"value":3.1,"unit":"cP"},"cranking":[{"degC":-30,"mPas":5500}],"pumping":[{"degC":-35,"mPas":20000}]}""", "grade", "5W-30")]
    [InlineData("SAE J2012 bytes", "trouble-code-bytes", """{"first":1,"second":4}""", "code", "P0104")]
    [InlineData("SAE J2012 bytes", "trouble-code-bytes", """{"first":65,"second":35}""", "code", "C0123")]
    [InlineData("SAE J2012 bytes", "trouble-code-bytes", """{"first":128,"second":3}""", "code", "B0003")]
    [InlineData("SAE J2012 bytes", "trouble-code-bytes", """{"first":193,"second":0}""", "code", "U0100")]
    [InlineData("SAE J2012 bytes", "trouble-code-bytes", """{"first":0,"second":0}""", "code", "none")]
    [InlineData("49 CFR 574.5 year", "tyre-age", """{"code":"0301"}""", "year", "2001")]
    [InlineData("StVZO Anlage VIII first test", "roadworthiness-test", """{"law":"DE","registered":"2024-01-15"}""", "due", "2027-01-15")]
    [InlineData("StVZO Anlage VIII later tests", "roadworthiness-test", """{"law":"DE","registered":"2020-01-15","lastTest":"2025-01-15"}""", "due", "2027-01-15")]
    [InlineData("Directive 2014/45/EU first test", "roadworthiness-test", """{"law":"EU","registered":"2024-01-15"}""", "due", "2028-01-15")]
    [InlineData("Directive 2014/45/EU later tests", "roadworthiness-test", """{"law":"EU","registered":"2020-01-15","lastTest":"2025-01-15"}""", "due", "2027-01-15")]
    public async Task Compute_Example_GivesItsName(string example, string computation, string body, string result, string expected)
    {
        var found = (await ResultAsync(computation, body, result)).GetProperty("text").GetString();

        Assert.True(found == expected, $"{example}: {found} instead of {expected}");
    }

    /// <summary>ASTM D2270 does not define the index below 2 mm²/s.</summary>
    [Fact]
    public async Task Compute_ViscosityIndexOfTooThinAnOil_IsRefused() => Assert.Equal("/viscosityAt100/value", (await service.RefuseAsync(
        "/v1/arithmetic/viscosity-index", """{"viscosityAt40":{"value":6,"unit":"cSt"},"viscosityAt100":{"value":1.99,"unit":"cSt"}}""")).GetProperty("errors")[0].GetProperty("pointer").GetString());

    /// <summary>49 CFR 570.7(a), Table 1.</summary>
    [Theory]
    [InlineData(16, 2)]
    [InlineData(18, 2.25)]
    [InlineData(20, 2.5)]
    [InlineData(22, 2.75)]
    public async Task Judge_SteeringFreePlay_PassesAtTheTableAndFailsBeyond(int wheel, double most)
    {
        var vehicle = $$"""{"steering":{"wheelDiameter":{"value":{{wheel}},"unit":"in"} } }""";

        Assert.Equal("none", await ClassAsync("US", vehicle, "steering-free-play", most, "in"));
        Assert.Equal("major", await ClassAsync("US", vehicle, "steering-free-play", most + 0.01, "in"));
    }

    /// <summary>2/32 in is 1.5875 mm: what passes in the United States fails in the European Union.</summary>
    [Theory]
    [InlineData("US", 1.59, "none")]
    [InlineData("US", 1.58, "major")]
    [InlineData("EU", 1.59, "major")]
    [InlineData("EU", 1.6, "none")]
    public async Task Judge_Tread_GoesByTheLawOfTheCountry(string law, double millimetres, string deficiency) =>
        Assert.Equal(deficiency, await ClassAsync(law, "{}", "tyre-tread-depth", millimetres, "mm"));

    private const string NistLives = """{"failed":[54,187,216,240,244,335,361,373,375,386],"running":[500,500,500,500,500,500,500,500,500,500]}""";
    private const string Khurmi = """{"mass":{"value":8,"unit":"kg"},"stiffness":{"value":5400,"unit":"N/m"},"damping":{"value":40,"unit":"N.s/m"}}""";

    private async Task<JsonElement> ResultAsync(string computation, string body, string result) =>
        (await service.AskAsync($"/v1/arithmetic/{computation}", body)).GetProperty("results").EnumerateArray().Single(one => one.GetProperty("name").GetString() == result);

    /// <summary>The class by the limits of the law alone.</summary>
    private async Task<string?> ClassAsync(string jurisdiction, string vehicle, string check, double value, string unit)
    {
        var answer = await service.AskAsync("/v1/judgements", FormattableString.Invariant(
            $$$"""{"jurisdiction":"{{{jurisdiction}}}","vehicle":{{{vehicle}}},"findings":[{"check":"{{{check}}}","value":{{{value}}},"unit":"{{{unit}}}"}]}"""));
        return answer.GetProperty("judgements")[0].GetProperty("limits").EnumerateArray()
            .Where(limit => limit.GetProperty("jurisdiction").ValueKind is JsonValueKind.String)
            .Select(limit => limit.GetProperty("deficiency").GetString()).MaxBy(one => Array.IndexOf(["none", "minor", "major", "dangerous"], one));
    }
}
