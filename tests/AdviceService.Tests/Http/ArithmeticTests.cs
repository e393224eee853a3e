using System.Net;
using System.Text.Json;
using Advice.Arithmetic;

namespace AdviceService.Tests.Http;

[Collection(Served.ByHttp)]
public class ArithmeticTests(RunningService service)
{
    /// <summary>Published examples, asked as a caller would, in units of the trade.</summary>
    [Theory]
    [InlineData("battery-state-of-charge", """{"voltage":{"value":12400,"unit":"mV"},"temperature":{"value":80,"unit":"degF"}}""", "stateOfCharge", 69, 0.5)]
    [InlineData("battery-specific-gravity", """{"gravity":1.250,"temperature":{"value":20,"unit":"degF"}}""", "gravityAt80DegF", 1.226, 1e-6)]
    [InlineData("battery-load-test", """{"voltage":{"value":9.5,"unit":"V"},"temperature":{"value":50,"unit":"degF"}}""", "least", 9.4, 1e-6)]
    [InlineData("coolant-freeze-point", """{"glycol":"ethylene","concentration":{"value":50,"unit":"%"}}""", "freezesAt", -37.0, 0.05)]
    [InlineData("coolant-concentration", """{"glycol":"ethylene","freezesAt":{"value":-4,"unit":"degF"}}""", "concentration", 35.2, 0.05)]
    [InlineData("coolant-drain-and-fill", """{"capacity":{"value":8,"unit":"L"},"present":{"value":30,"unit":"percent"},"target":{"value":50,"unit":"percent"}}""", "replace", 2.286, 0.0005)]
    [InlineData("viscosity-index", """{"viscosityAt40":{"value":73.30,"unit":"cSt"},"viscosityAt100":{"value":8.86,"unit":"mm2/s"}}""", "viscosityIndex", 92, 0)]
    [InlineData("viscosity-at-temperature", """{"measured":[{"degC":40,"mm2s":32},{"degC":100,"mm2s":5.4}],"temperature":{"value":80,"unit":"degC"}}""", "viscosity", 8.533, 0.001)]
    [InlineData("fuel-trim-byte", """{"value":160}""", "trim", 25, 0)]
    [InlineData("exhaust-lambda", """{"carbonMonoxide":{"value":1.2,"unit":"%"},"carbonDioxide":{"value":13.5,"unit":"%"},"hydrocarbonsPpm":45,"oxygen":{"value":0.3,"unit":"%"}}""", "lambda", 0.976, 0.0005)]
    [InlineData("oxygen-cell", """{"temperature":{"value":700,"unit":"degC"},"oxygen":0.01}""", "voltage", 63.8, 0.05)]
    [InlineData("damping-ratio", """{"mass":{"value":8,"unit":"kg"},"stiffness":{"value":5400,"unit":"N/m"},"damping":{"value":40,"unit":"N.s/m"}}""", "dampingRatio", 0.096, 0.0005)]
    [InlineData("falling-ball-viscosity", """{"radius":{"value":1.85,"unit":"mm"},"ballDensity":{"value":7729.5,"unit":"kg/m3"},"oilDensity":{"value":1260,"unit":"kg/m3"},"speed":{"value":3.9,"unit":"cm/s"}}""", "viscosity", 1237.2, 0.1)]
    [InlineData("tyre-size", """{"size":"245/55R18"}""", "diameter", 726.7, 0.05)]
    [InlineData("tyre-load-and-speed", """{"loadIndex":91,"speedSymbol":"H"}""", "load", 615, 0)]
    [InlineData("stopping-distance", """{"speed":{"value":20,"unit":"mph"},"deceleration":{"value":21,"unit":"ft/s2"}}""", "efficiency", 65.27, 0.005)]
    [InlineData("operator-risk-rating", """{"dangerous":[0,1,0],"major":[1,0,0],"minor":[2,0,3],"checks":[2,1,1]}""", "rating", 29.75, 0)]
    [InlineData("compression", """{"pressures":{"values":[150,140,135,148],"unit":"psi"}}""", "leastByStricterRule", 112.5 * 6.894757, 0.01)]
    public async Task Compute_PublishedExample(string name, string body, string result, double expected, double tolerance)
    {
        var (status, answer) = await PostAsync(name, body);

        Assert.True(status == HttpStatusCode.OK, answer.ToString());
        var found = answer.GetProperty("results").EnumerateArray().Single(one => one.GetProperty("name").GetString() == result);
        Assert.Equal(expected, found.GetProperty("value").GetDouble(), tolerance);
    }

    [Theory]
    [InlineData("oil-grade", """{"viscosityAt100":{"value":10.5,"unit":"cSt"},"highShearViscosity":{"value":3.1,"unit":"cP"},"cranking":[{"degC":-30,"mPas":5500}],"pumping":[{"degC":-35,"mPas":20000}]}""", "grade", "5W-30")]
    [InlineData("trouble-code-bytes", """{"first":193,"second":0}""", "code", "U0100")]
    [InlineData("tyre-age", """{"code":"0301","asOf":"2026-03-01"}""", "year", "2001")]
    public async Task Compute_PublishedClass(string name, string body, string result, string expected)
    {
        var (status, answer) = await PostAsync(name, body);

        Assert.True(status == HttpStatusCode.OK, answer.ToString());
        var found = answer.GetProperty("results").EnumerateArray().Single(one => one.GetProperty("name").GetString() == result);
        Assert.Equal(expected, found.GetProperty("text").GetString());
    }

    [Theory]
    [InlineData("battery-state-of-charge", """{"voltage":{"value":300,"unit":"V"}}""", 422, "/voltage/value", "Must be between 10 and 14.5 V.")]
    [InlineData("battery-state-of-charge", """{"voltage":{"value":12.4}}""", 400, "/voltage/unit", "Must be given.")]
    [InlineData("battery-state-of-charge", """{"voltage":12.4}""", 400, "/voltage", "Must be an object, not a number.")]
    [InlineData("battery-state-of-charge", """{"voltage":{"value":12.4,"unit":"kPa"}}""", 400, "/voltage/unit", "Must be one of V, mV.")]
    [InlineData("battery-state-of-charge", """{}""", 400, "/voltage", "Must be given.")]
    [InlineData("battery-state-of-charge", """{"voltage":{"value":12.4,"unit":"V"},"temprature":1}""", 400, "/temprature", "The object has no such member; nearest: temperature.")]
    [InlineData("compression", """{"pressures":{"values":[150],"unit":"psi"}}""", 422, "/pressures/values", "Must have at least 2 elements.")]
    [InlineData("compression", """{"pressures":{"values":[150,-3],"unit":"kPa"}}""", 422, "/pressures/values/1", "Must be between 0 and 7000 kPa.")]
    [InlineData("compression", """{"pressures":{"values":[150,140]}}""", 400, "/pressures/unit", "Must be given.")]
    [InlineData("viscosity-at-temperature", """{"measured":[{"degC":100,"mm2s":5.4},{"degC":40,"mm2s":32}],"temperature":{"value":80,"unit":"degC"}}""", 422, "/measured/1/degC", "Must be above that of the point before.")]
    [InlineData("viscosity-at-temperature", """{"measured":[{"degC":40,"mm2s":5.4},{"degC":100,"mm2s":32}],"temperature":{"value":80,"unit":"degC"}}""", 422, "/measured", "The viscosity must fall with temperature.")]
    [InlineData("viscosity-index", """{"viscosityAt40":{"value":6,"unit":"cSt"},"viscosityAt100":{"value":1.99,"unit":"cSt"}}""", 422, "/viscosityAt100/value", "Must be between 2 and 500 mm2/s.")]
    [InlineData("tyre-size", """{"size":"205-55-16"}""", 422, "/size", "Must have the form of 205/55R16.")]
    [InlineData("tyre-tread", """{"depth":{"value":12,"unit":"32nds"},"newDepth":{"value":8,"unit":"mm"}}""", 422, "/depth", "Must be between 0 and 8 mm, the depth when new.")]
    [InlineData("trouble-code-bytes", """{"first":1.5,"second":0}""", 422, "/first", "Must be a whole number.")]
    [InlineData("oil-comparison", """{"inSump":"75W-90","named":"5W-30"}""", 422, "/inSump", "SAE J300 has no such grade.")]
    public async Task Compute_Wrong_NamesThePlaceAndWhatIsRight(string name, string body, int status, string pointer, string detail)
    {
        var (code, problem) = await PostAsync(name, body);

        Assert.Equal(status, (int)code);
        Assert.Equal("/" + pointer.TrimStart('/'), problem.GetProperty("errors")[0].GetProperty("pointer").GetString());
        Assert.Equal(detail, problem.GetProperty("errors")[0].GetProperty("detail").GetString());
    }

    [Fact]
    public async Task Compute_UnknownName_OffersTheNearest()
    {
        var (status, problem) = await PostAsync("battery-state-of-chrage", "{}");

        Assert.Equal(HttpStatusCode.NotFound, status);
        Assert.Contains("battery-state-of-charge", problem.GetProperty("errors")[0].GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task List_NamesEveryComputation()
    {
        var list = JsonDocument.Parse(await service.Client.GetStringAsync("/v1/arithmetic")).RootElement;

        Assert.Equal(Computations.All.Select(one => one.Name), list.EnumerateArray().Select(one => one.GetProperty("name").GetString()));
        Assert.All(list.EnumerateArray(), one => Assert.NotEqual(0, one.GetProperty("sources").GetArrayLength()));
    }

    private async Task<(HttpStatusCode Status, JsonElement Answer)> PostAsync(string name, string body)
    {
        var response = await service.Client.PostAsync($"/v1/arithmetic/{name}", RunningService.Json(body));
        return (response.StatusCode, JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement);
    }
}
