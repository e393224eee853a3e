using System.Net;
using System.Text.Json;

namespace AdviceService.Tests.Http;

[Collection(Served.ByHttp)]
public class ProblemTests(RunningService service)
{
    /// <summary>Path, media type, body, status and the pointers of all errors.</summary>
    public static TheoryData<string, string, string, int, string[]> Malformed => new()
    {
        { "/v1/advice", "application/json", "", 400, [""] },
        { "/v1/advice", "application/json", "{", 400, [""] },
        { "/v1/advice", "application/json", "[]", 400, [""] },
        { "/v1/advice", "application/json", "{}", 400, ["/vehicle"] },
        { "/v1/advice", "application/json", """{"vehicle":{},"vehicle":{}}""", 400, ["/vehicle"] },
        { "/v1/advice", "application/json", """{"vehicle":{"fuel":1}}""", 400, ["/vehicle/fuel"] },
        { "/v1/advice", "application/json", """{"vehicle":{"fuel":"Diesel"}}""", 400, ["/vehicle/fuel"] },
        { "/v1/advice", "application/json", """{"vehicle":{"odometer":{"value":1e999,"unit":"km"}}}""", 422, ["/vehicle/odometer/value"] },
        { "/v1/advice", "application/json", """{"vehicle":{"odometer":{"value":-1,"unit":"km"}}}""", 422, ["/vehicle/odometer/value"] },
        { "/v1/advice", "application/json", """{"vehicle":{"modelYear":1200}}""", 422, ["/vehicle/modelYear"] },
        { "/v1/advice", "application/json", """{"vehicle":{},"symptoms":[null,{"symptom":"sqeal"}],"nope":1}""", 400, ["/nope", "/symptoms/0", "/symptoms/1/symptom"] },
        { "/v1/advice", "text/plain", """{"vehicle":{}}""", 415, [""] },
        { "/v1/advice/batch", "application/json", """{"vehicle":{}}""", 415, [""] },
        { "/v1/nothing", "application/json", "{}", 404, [""] },
        { "/health/live", "application/json", "{}", 405, [""] },
    };

    [Theory]
    [MemberData(nameof(Malformed))]
    public async Task Post_Malformed_IsTheSameProblemInProductionAndDevelopment(string path, string mediaType, string body, int status, string[] pointers)
    {
        var inProduction = await PostAsync(service.Client, path, mediaType, body);
        var inDevelopment = await PostAsync(service.Development, path, mediaType, body);

        Assert.Equal(status, inProduction.Status);
        Assert.Equal(pointers.Order(StringComparer.Ordinal), inProduction.Pointers);
        Assert.Equal(inProduction.Text, inDevelopment.Text);
        Assert.DoesNotContain("System.", inProduction.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(10)]
    public async Task Post_TooLarge_Is413(int mebibytes)
    {
        var body = $$"""{"vehicle":{},"complaint":"{{new string('x', mebibytes * 1024 * 1024)}}"}""";

        var response = await service.Client.PostAsync("/v1/advice", RunningService.Json(body));

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
    }

    private static async Task<(int Status, string[] Pointers, string Text)> PostAsync(HttpClient client, string path, string mediaType, string body)
    {
        var response = await client.PostAsync(path, RunningService.Content(body, mediaType));
        var text = await response.Content.ReadAsStringAsync();
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        var errors = JsonDocument.Parse(text).RootElement.GetProperty("errors").EnumerateArray().ToList();
        Assert.All(errors, error => Assert.NotEmpty(error.GetProperty("detail").GetString()!));
        return ((int)response.StatusCode, [.. errors.Select(error => error.GetProperty("pointer").GetString()!).Order(StringComparer.Ordinal)], text);
    }
}
