using System.Net;
using System.Text.Json;

namespace AdviceService.Tests.Http;

[Collection(Served.ByHttp)]
public class CatalogueRouteTests(RunningService service)
{
    public static TheoryData<string> Lists =>
    [
        "/v1/catalogue/systems", "/v1/catalogue/symptoms", "/v1/catalogue/faults", "/v1/catalogue/checks", "/v1/catalogue/cautions", "/v1/rules",
    ];

    [Theory]
    [MemberData(nameof(Lists))]
    public async Task Get_EachListedEntry_IsTheEntryByItsId(string path)
    {
        var list = await GetAsync(path);

        Assert.NotEmpty(list.EnumerateArray());
        foreach (var entry in list.EnumerateArray().Take(5))
            Assert.Equal(entry.GetRawText(), (await GetAsync($"{path}/{entry.GetProperty("id").GetString()}")).GetRawText());
    }

    [Theory]
    [MemberData(nameof(Lists))]
    public async Task Get_WithTheTagItGave_IsNotModified(string path)
    {
        var first = await service.Client.GetAsync(path);
        using var again = new HttpRequestMessage(HttpMethod.Get, path) { Headers = { IfNoneMatch = { first.Headers.ETag! } } };

        Assert.Equal(HttpStatusCode.NotModified, (await service.Client.SendAsync(again)).StatusCode);
    }

    [Fact]
    public async Task Get_RuleSet_TagIsItsRevision()
    {
        var response = await service.Client.GetAsync("/v1/rule-set");

        var revision = JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("revision").GetString();
        Assert.Equal($"\"{revision}\"", response.Headers.ETag?.Tag);
    }

    [Fact]
    public async Task Get_UnknownId_OffersTheNearest()
    {
        var response = await service.Client.GetAsync("/v1/catalogue/faults/brake-pads-wron");

        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
        Assert.Contains("brake-pads-worn", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/", "text/html")]
    [InlineData("/docs/index.html", "text/html")]
    [InlineData("/openapi/v1.json", "application/json")]
    public async Task Get_PageForPeople_IsThereAndNamesNoOtherHost(string path, string mediaType)
    {
        var response = await service.Client.GetAsync(path);

        Assert.Equal(mediaType, response.Content.Headers.ContentType?.MediaType);
        Assert.DoesNotContain("://", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    private async Task<JsonElement> GetAsync(string path) => JsonDocument.Parse(await service.Client.GetStringAsync(path)).RootElement;
}
