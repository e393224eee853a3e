using System.Text.Json;

namespace AdviceService.Tests.Http;

[Collection(Served.ByHttp)]
public class DueTests(RunningService service)
{
    [Theory]
    [InlineData("2025-06-01", "later", -457)]
    [InlineData("2024-04-01", "soon", -31)]
    [InlineData("2024-02-01", "due", 29)]
    [InlineData("2020-03-01", "overdue", 1461)]
    public async Task Due_BrakeFluidByTime_GoesFromLaterToOverdue(string on, string status, int daysPast)
    {
        var item = await ItemAsync("brake-fluid", $$$"""{"asOf":"2026-03-01","vehicle":{"modelYear":2015,"duty":"normal"},"services":[{"item":"brake-fluid","on":"{{{on}}}","interval":{"years":2}}]}""");

        Assert.Equal(status, item.GetProperty("status").GetString());
        Assert.InRange(item.GetProperty("by").GetProperty("days").GetInt32() - daysPast, -1, 1);
    }

    [Theory]
    [InlineData(8_900, "later")]
    [InlineData(9_500, "soon")]
    [InlineData(10_200, "due")]
    [InlineData(11_500, "overdue")]
    public async Task Due_MakersDistance_WinsOverOurs(int drivenKm, string status)
    {
        var item = await ItemAsync(
            "timing-belt",
            $$$$"""
            {"asOf":"2026-03-01","vehicle":{"modelYear":2015,"odometer":{"value":{{{{99_500 + drivenKm}}}},"unit":"km"},"engine":{"timingDrive":"belt","interference":false}},
             "services":[{"item":"timing-belt","odometer":{"value":99500,"unit":"km"},"interval":{"distance":{"value":10000,"unit":"km"}}}]}
            """);

        Assert.Equal(status, item.GetProperty("status").GetString());
        Assert.Equal(drivenKm - 10_000, item.GetProperty("by").GetProperty("km").GetDouble());
        Assert.Equal("given with the request", item.GetProperty("source").GetString());
    }

    [Theory]
    [InlineData("true", "overdue")]
    [InlineData("false", "due")]
    public async Task Due_TimingBeltJustReached_IsNeverMerelyDueWhereValvesMeetPistons(string interference, string status)
    {
        var item = await ItemAsync(
            "timing-belt",
            $$$"""
            {"asOf":"2026-03-01","vehicle":{"modelYear":2015,"engine":{"timingDrive":"belt","interference":{{{interference}}}}},
             "services":[{"item":"timing-belt","on":"2020-02-01","interval":{"years":6}}]}
            """);

        Assert.Equal(status, item.GetProperty("status").GetString());
    }

    [Fact]
    public async Task Due_SevereDuty_IsDueNoLater()
    {
        const string Services = """ "services":[{"item":"timing-belt","on":"2021-01-01"}]""";
        var normal = await ItemAsync("timing-belt", $$$"""{"asOf":"2026-03-01","vehicle":{"engine":{"timingDrive":"belt"},"duty":"normal"},{{{Services}}}}""");
        var severe = await ItemAsync("timing-belt", $$$"""{"asOf":"2026-03-01","vehicle":{"engine":{"timingDrive":"belt"},"duty":"severe"},{{{Services}}}}""");

        Assert.True(severe.GetProperty("at").GetProperty("on").GetDateTime() < normal.GetProperty("at").GetProperty("on").GetDateTime());
    }

    [Fact]
    public async Task Due_VehicleWithoutBelt_HasNoBeltItem()
    {
        var answer = await service.AskAsync("/v1/due", """{"vehicle":{"fuel":"electric","modelYear":2020}}""");

        var items = answer.GetProperty("due").EnumerateArray().Select(item => item.GetProperty("item").GetString()).ToList();
        Assert.NotEmpty(items);
        Assert.DoesNotContain("timing-belt", items);
    }

    /// <summary>The engine may be interference or not: most are, and then a belt without a record is never merely due.</summary>
    [Theory]
    [InlineData("\"interference\":true,", "overdue")]
    [InlineData("", "overdue")]
    public async Task Due_TimingBeltWithoutRecord_CountsFromNewAndIsPressing(string interference, string status)
    {
        var item = await ItemAsync("timing-belt", $$$"""{"asOf":"2026-03-01","vehicle":{"modelYear":2014,"engine":{ {{{interference}}} "timingDrive":"belt"} } }""");

        Assert.Equal(status, item.GetProperty("status").GetString());
        Assert.False(item.GetProperty("recorded").GetBoolean());
        Assert.Contains("counted from new", item.GetProperty("because").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Due_FromNew_BrakeFluidOfAThreeYearOldCarIsOverdue()
    {
        var item = await ItemAsync("brake-fluid", """{"asOf":"2026-03-01","vehicle":{"modelYear":2023,"duty":"normal"}}""");

        Assert.Equal("overdue", item.GetProperty("status").GetString());
        Assert.Equal("2025-01-01", item.GetProperty("at").GetProperty("on").GetString());
    }

    [Fact]
    public async Task Due_TwoMeasures_WhicheverComesFirstDecides()
    {
        var item = await ItemAsync(
            "engine-oil",
            """
            {"asOf":"2026-03-01","vehicle":{"modelYear":2015,"odometer":{"value":60000,"unit":"mi"}},
             "services":[{"item":"engine-oil","on":"2025-12-01","odometer":{"value":52000,"unit":"mi"},"interval":{"distance":{"value":7500,"unit":"mi"},"years":1}}]}
            """);

        Assert.Equal("due", item.GetProperty("status").GetString());
        Assert.Equal(805, item.GetProperty("by").GetProperty("km").GetDouble());
        Assert.InRange(item.GetProperty("by").GetProperty("days").GetInt32(), -276, -274);
        Assert.Contains("wins over ours", item.GetProperty("because").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Advise_OldVehicleWithoutRecords_DoesNotListWhatMayHaveBeenDone()
    {
        var advice = await service.AdviseAsync("""{"asOf":"2026-03-01","vehicle":{"modelYear":2008,"odometer":{"value":200000,"unit":"km"},"engine":{"timingDrive":"chain"}}}""");

        Assert.Empty(advice.GetProperty("due").EnumerateArray());
    }

    [Theory]
    [InlineData("{}", "/services/0/interval")]
    [InlineData("""{"years":0}""", "/services/0/interval/years")]
    [InlineData("""{"distance":{"value":5000}}""", "/services/0/interval/distance/unit")]
    [InlineData("""{"distance":{"value":-1,"unit":"km"}}""", "/services/0/interval/distance/value")]
    public async Task Due_BadInterval_IsRefusedWithItsPointer(string interval, string pointer)
    {
        using var response = await service.Client.PostAsync("/v1/due", RunningService.Json($$$"""{"vehicle":{},"services":[{"item":"brake-fluid","interval":{{{interval}}}}]}"""));

        var problem = JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement;
        Assert.Contains(problem.GetProperty("errors").EnumerateArray(), error => error.GetProperty("pointer").GetString() == pointer);
    }

    [Fact]
    public async Task Due_NothingKnown_IsUnknownAndSaysThat()
    {
        var item = await ItemAsync("brake-fluid", """{"vehicle":{}}""");

        Assert.Equal("unknown", item.GetProperty("status").GetString());
        Assert.Equal(JsonValueKind.Null, item.GetProperty("by").GetProperty("days").ValueKind);
    }

    private async Task<JsonElement> ItemAsync(string item, string request) =>
        (await service.AskAsync("/v1/due", request)).GetProperty("due").EnumerateArray().Single(one => one.GetProperty("item").GetString() == item);
}
