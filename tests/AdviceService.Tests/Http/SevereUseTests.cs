using System.Text.Json;

namespace AdviceService.Tests.Http;

[Collection(Served.ByHttp)]
public class SevereUseTests(RunningService service)
{
    [Theory]
    [InlineData("engine-oil", "towing", "towing", true)]
    [InlineData("engine-oil", "stopAndGo", "stop and go", true)]
    [InlineData("air-filter", "dust", "dusty roads", true)]
    [InlineData("air-filter", "shortTrips", "short trips", false)]
    [InlineData("brake-fluid", "extremeTemperature", "great heat or cold", true)]
    [InlineData("brake-fluid", "dust", "dusty roads", false)]
    public async Task Due_KindOfSevereUse_ShortensWhatItWearsAndIsTheReason(string item, string kind, string name, bool shortened)
    {
        var severe = await ItemAsync(item, $"\"severeUse\":[\"{kind}\"]");
        var normal = await ItemAsync(item, "\"duty\":\"normal\"");

        Assert.Equal(shortened, severe.GetProperty("at").GetRawText() != normal.GetProperty("at").GetRawText());
        Assert.Equal(shortened, severe.GetProperty("because").GetString()!.Contains($"for severe use: {name}.", StringComparison.Ordinal));
        Assert.Equal(shortened ? [kind] : [], severe.GetProperty("severeUse").EnumerateArray().Select(one => one.GetString()));
    }

    [Fact]
    public async Task Due_SevereDutyWithoutKind_IsTheSevereIntervalOfEach()
    {
        var item = await ItemAsync("air-filter", "\"duty\":\"severe\"");

        Assert.Contains("for severe use.", item.GetProperty("because").GetString(), StringComparison.Ordinal);
        Assert.Empty(item.GetProperty("severeUse").EnumerateArray());
    }

    [Fact]
    public async Task Due_SeveralKinds_AreAllNamed() => Assert.Contains(
        "for severe use: towing, short trips.", (await ItemAsync("spark-plugs", "\"severeUse\":[\"towing\",\"dust\",\"shortTrips\"]")).GetProperty("because").GetString(), StringComparison.Ordinal);

    [Fact]
    public async Task Due_KindWithNormalDuty_IsRefused()
    {
        var problem = await service.RefuseAsync("/v1/due", """{"vehicle":{"duty":"normal","severeUse":["towing"]}}""");

        Assert.Equal("/vehicle/severeUse", problem.GetProperty("errors")[0].GetProperty("pointer").GetString());
    }

    private async Task<JsonElement> ItemAsync(string id, string use)
    {
        var answer = await service.AskAsync("/v1/due", $$$"""{"asOf":"2026-03-01","vehicle":{"modelYear":2024,"fuel":"gasoline","odometer":{"value":9000,"unit":"km"},{{{use}}}}}""");
        return answer.GetProperty("due").EnumerateArray().Single(item => item.GetProperty("item").GetString() == id);
    }
}
