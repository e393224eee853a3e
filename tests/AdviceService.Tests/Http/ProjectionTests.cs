using System.Text.Json;
using System.Xml.Linq;

namespace AdviceService.Tests.Http;

[Collection(Served.ByHttp)]
public class ProjectionTests(RunningService service)
{
    private const string Tread = """{"asOf":"2026-03-01","check":"tyre-tread-depth","position":"front-left",""";

    /// <summary>Tread 8.0 mm at 0 and 5.0 mm at 30,000 km: 64,000 km at 1.6 mm.</summary>
    [Fact]
    public async Task Project_OneReadingAndTheNewDepth_IsLinearWear()
    {
        var first = await FirstAsync(Tread + """
            "new":{"value":8,"unit":"mm","on":"2024-03-01","odometer":{"value":0,"unit":"km"}},"gaugeError":{"value":0.2,"unit":"mm"},
            "measurements":[{"value":5,"unit":"mm","on":"2026-03-01","odometer":{"value":30000,"unit":"km"}}],"limit":{"minimum":1.6,"unit":"mm"}}
            """);

        Assert.Equal("projected", first.GetProperty("status").GetString());
        Assert.Equal(64_000, first.GetProperty("expected").GetProperty("odometer").GetProperty("value").GetDouble());
        Assert.Equal("2028-06-05", first.GetProperty("expected").GetProperty("on").GetString());
        Assert.False(first.GetProperty("earliest").GetProperty("alreadyPast").GetBoolean());
    }

    /// <summary>The same readings in 32nds of an inch and miles give the same day.</summary>
    [Fact]
    public async Task Project_OtherUnits_ChangeNothing()
    {
        const string Metric = Tread + """
            "measurements":[{"value":7.9375,"unit":"mm","on":"2024-03-01","odometer":{"value":0,"unit":"km"}},{"value":6.35,"unit":"mm","on":"2025-03-01","odometer":{"value":16093.44,"unit":"km"}},
            {"value":4.7625,"unit":"mm","on":"2026-02-01","odometer":{"value":28968.192,"unit":"km"}}]}
            """;
        const string Imperial = Tread + """
            "measurements":[{"value":10,"unit":"32nds","on":"2024-03-01","odometer":{"value":0,"unit":"mi"}},{"value":0.25,"unit":"in","on":"2025-03-01","odometer":{"value":10000,"unit":"mi"}},
            {"value":6,"unit":"32nds","on":"2026-02-01","odometer":{"value":18000,"unit":"mi"}}]}
            """;

        var (metric, imperial) = (await AskAsync(Metric), await AskAsync(Imperial));

        Assert.Equal(Days(metric), Days(imperial));

        static IEnumerable<string?> Days(JsonElement answer) => answer.GetProperty("limits").EnumerateArray()
            .SelectMany(limit => new[] { "earliest", "expected", "latest" }.Select(end => limit.GetProperty(end).GetProperty("on").GetString()));
    }

    /// <summary>The law decides: 2/32 in is 1.5875 mm, less than 1.6 mm, and so is reached later.</summary>
    [Fact]
    public async Task Project_Law_DecidesTheLimit()
    {
        const string Body = Tread + """
            "measurements":[{"value":8,"unit":"mm","on":"2024-03-01","odometer":{"value":0,"unit":"km"}},{"value":6.4,"unit":"mm","on":"2025-03-01","odometer":{"value":16000,"unit":"km"}},
            {"value":4.9,"unit":"mm","on":"2026-02-01","odometer":{"value":30000,"unit":"km"}}],"jurisdiction":"
            """;

        var (us, de) = (await AskAsync(Body.TrimEnd() + "US\"}"), await AskAsync(Body.TrimEnd() + "DE\"}"));

        Assert.True(Reached(us, 2.0 / 32, "in") > Reached(de, 1.6, "mm"));
        Assert.DoesNotContain(de.GetProperty("limits").EnumerateArray(), limit => limit.GetProperty("bound").GetProperty("unit").GetString() == "in");

        static double Reached(JsonElement answer, double bound, string unit) => answer.GetProperty("limits").EnumerateArray()
            .First(limit => limit.GetProperty("bound").GetProperty("value").GetDouble() == bound && limit.GetProperty("bound").GetProperty("unit").GetString() == unit)
            .GetProperty("expected").GetProperty("odometer").GetProperty("value").GetDouble();
    }

    [Fact]
    public async Task Project_LongPast_SaysSo()
    {
        var first = await FirstAsync(Tread + """
            "gaugeError":{"value":0.1,"unit":"mm"},"limit":{"minimum":3,"unit":"mm"},
            "measurements":[{"value":8,"unit":"mm","on":"2020-03-01","odometer":{"value":0,"unit":"km"}},{"value":4,"unit":"mm","on":"2022-03-01","odometer":{"value":40000,"unit":"km"}}]}
            """);

        Assert.True(first.GetProperty("expected").GetProperty("alreadyPast").GetBoolean());
        Assert.Contains("already past", first.GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("refused", "One reading", "5")]
    [InlineData("refused", "third reading", "8", "5")]
    [InlineData("refused", "got better", "8", "5", "8")]
    [InlineData("refused", "no wear", "5", "5.1", "5.2")]
    [InlineData("notDetermined", "scatter", "8", "7.7", "7.95")]
    [InlineData("reached", "beyond", "8", "5", "1.5")]
    public async Task Project_WhatIsNoWear_IsNamed(string status, string because, params string[] values)
    {
        var readings = values.Select((value, i) => $$$"""{"value":{{{value}}},"unit":"mm","on":"202{{{i + 2}}}-03-01","odometer":{"value":{{{i * 10000}}},"unit":"km"}}""");

        var first = await FirstAsync($$"""{{Tread}}"limit":{"minimum":1.6,"unit":"mm"},"measurements":[{{string.Join(',', readings)}}]}""");

        Assert.Equal(status, first.GetProperty("status").GetString());
        Assert.Contains(because, first.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, first.GetProperty("expected").ValueKind);
    }

    [Theory]
    [InlineData(422, "/measurements/0/value", """ "measurements":[{"value":-1,"unit":"mm","on":"2026-02-01","odometer":{"value":1,"unit":"km"}}]""")]
    [InlineData(400, "/measurements/0/unit", """ "measurements":[{"value":5,"on":"2026-02-01","odometer":{"value":1,"unit":"km"}}]""")]
    [InlineData(400, "/measurements/0/odometer", """ "measurements":[{"value":5,"unit":"mm","on":"2026-02-01"}]""")]
    [InlineData(422, "/measurements/0/on", """ "measurements":[{"value":5,"unit":"mm","on":"2026-03-02","odometer":{"value":1,"unit":"km"}}]""")]
    [InlineData(422, "/measurements/0/on", """ "replacedOn":"2026-02-10","measurements":[{"value":5,"unit":"mm","on":"2026-02-01","odometer":{"value":1,"unit":"km"}}]""")]
    [InlineData(422, "/measurements", """ "measurements":[]""")]
    [InlineData(400, "/measurements", "\"plot\":true")]
    [InlineData(422, "/gaugeError/value", """ "gaugeError":{"value":0,"unit":"mm"},"measurements":[{"value":5,"unit":"mm","on":"2026-02-01","odometer":{"value":1,"unit":"km"}}]""")]
    public async Task Project_Wrong_NamesTheField(int status, string pointer, string members)
    {
        var response = await service.Client.PostAsync("/v1/projections", RunningService.Json(Tread + members + "}"));

        Assert.Equal(status, (int)response.StatusCode);
        var error = JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors")[0];
        Assert.Equal(pointer, error.GetProperty("pointer").GetString());
    }

    [Fact]
    public async Task Project_Plot_IsAPictureWithAPointForEachReading()
    {
        var answer = await AskAsync(Tread + """
            "plot":true,"limit":{"minimum":1.6,"unit":"mm"},
            "measurements":[{"value":8,"unit":"mm","on":"2024-03-01","odometer":{"value":10000,"unit":"km"}},{"value":6.3,"unit":"mm","on":"2025-03-01","odometer":{"value":26000,"unit":"km"}},
            {"value":5.6,"unit":"mm","on":"2025-09-01","odometer":{"value":33000,"unit":"km"}},{"value":4.9,"unit":"mm","on":"2026-02-01","odometer":{"value":40000,"unit":"km"}}]}
            """);

        var svg = XDocument.Parse(answer.GetProperty("plot").GetString()!);
        Assert.Equal(4, svg.Descendants().Count(element => element.Name.LocalName == "circle"));
        Assert.Contains(svg.Descendants(), element => element.Value == "limit 1.6 mm");
        if (Environment.GetEnvironmentVariable("PLOT_FILE") is { Length: > 0 } file)
            svg.Save(file);
    }

    private async Task<JsonElement> FirstAsync(string body) => (await AskAsync(body)).GetProperty("limits")[0];

    private async Task<JsonElement> AskAsync(string body)
    {
        var response = await service.Client.PostAsync("/v1/projections", RunningService.Json(body));
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, text);
        Assert.True(InterfaceDescription.Schema("ProjectionRequest").Evaluate(JsonDocument.Parse(body).RootElement).IsValid, body);
        Assert.True(InterfaceDescription.Schema("ProjectionDocument").Evaluate(JsonDocument.Parse(text).RootElement).IsValid, text);
        return JsonDocument.Parse(text).RootElement;
    }
}
