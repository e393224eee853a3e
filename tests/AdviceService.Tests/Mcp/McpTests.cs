using System.Net;
using System.Text.Json;
using AdviceService.Mcp;
using AdviceService.Tests.Http;
using Json.Schema;
using ModelContextProtocol.Client;
using ModelContextProtocol.Protocol;

namespace AdviceService.Tests.Mcp;

/// <summary>The tools as a chat host sees them, through the client of the protocol's own SDK.</summary>
[Collection(Served.ByHttp)]
public class McpTests(RunningService service)
{
    public static TheoryData<string, string> Calls => new()
    {
        { "advise", """{"asOf":"2026-03-01","vehicle":{"fuel":"gasoline"},"complaint":"It squeals when I brake"}""" },
        { "read_complaint", """{"asOf":"2026-03-01","text":"No squeal when braking, but it pulls to the left since last week. P0420"}""" },
        { "inspect", """{"asOf":"2026-03-01","vehicle":{"modelYear":2011,"fuel":"gasoline"},"workshop":{"minutes":30}}""" },
        { "judge", """{"asOf":"2026-03-01","vehicle":{},"jurisdiction":"EU","findings":[{"check":"tyre-tread-depth","value":1.5,"unit":"mm"}]}""" },
        { "due", """{"asOf":"2026-03-01","vehicle":{"modelYear":2011,"fuel":"gasoline","odometer":{"value":150000,"unit":"km"}}}""" },
        { "project_wear", """{"asOf":"2026-03-01","check":"tyre-tread-depth","jurisdiction":"EU","measurements":[{"on":"2024-03-01","odometer":{"value":20000,"unit":"km"},"value":8,"unit":"mm"},{"on":"2026-01-01","odometer":{"value":50000,"unit":"km"},"value":5,"unit":"mm"}]}""" },
        { "why_not", """{"asOf":"2026-03-01","vehicle":{"fuel":"gasoline"},"complaint":"It squeals when I brake","fault":"wheel-bearing-worn"}""" },
        { "search_catalogue", """{"words":"brake pads worn","kind":"faults","limit":3}""" },
    };

    [Fact]
    public void Calls_HaveEveryTool() => Assert.Equal(AdviceTools.All.Select(tool => tool.Name), Calls.Select(row => (string)row[0]));

    [Theory]
    [MemberData(nameof(Calls))]
    public async Task Call_RightArguments_AnswerFitsItsSchemaAndIsThatOfHttp(string tool, string arguments)
    {
        await using var client = await ConnectAsync();
        var listed = (await client.ListToolsAsync()).Single(one => one.Name == tool).ProtocolTool;

        var result = await client.CallToolAsync(tool, Arguments(arguments));

        Assert.NotEqual(true, result.IsError);
        Assert.True(JsonSchema.FromText(listed.InputSchema.GetRawText()).Evaluate(JsonDocument.Parse(arguments).RootElement).IsValid);
        Assert.True(JsonSchema.FromText(listed.OutputSchema!.Value.GetRawText()).Evaluate(result.StructuredContent!.Value).IsValid);
        Assert.True(JsonElement.DeepEquals(result.StructuredContent.Value, JsonDocument.Parse(((TextContentBlock)result.Content.Single()).Text).RootElement));
        var path = tool switch
        {
            "advise" => "/v1/advice",
            "read_complaint" => "/v1/intake",
            "inspect" => "/v1/inspection",
            "judge" => "/v1/judgements",
            "due" => "/v1/due",
            "project_wear" => "/v1/projections",
            "why_not" => "/v1/why-not",
            _ => "/v1/catalogue/search",
        };
        var overHttp = await (await service.Client.PostAsync(path, RunningService.Json(arguments))).Content.ReadAsStringAsync();
        Assert.True(JsonElement.DeepEquals(JsonDocument.Parse(overHttp).RootElement, result.StructuredContent.Value));
    }

    [Theory]
    [InlineData("advise", """{"vehicle":{"modelYear":1200}}""", "/vehicle/modelYear: Must be between 1950")]
    [InlineData("advise", """{"vehicle":{},"complain":"x"}""", "nearest: complaint")]
    [InlineData("advise", """{"vehicle":{},"complaint":null}""", "/complaint: ")]
    [InlineData("advise", "{}", "/vehicle: Must be given")]
    [InlineData("why_not", """{"vehicle":{},"fault":"brake-pad-worn"}""", "/fault: ")]
    [InlineData("search_catalogue", """{"words":"x","kind":"fault"}""", "/kind: Must be one of systems")]
    public async Task Call_WrongArguments_TextFromWhichAModelCanCorrectItself(string tool, string arguments, string said)
    {
        await using var client = await ConnectAsync();

        var result = await client.CallToolAsync(tool, Arguments(arguments));

        Assert.True(result.IsError);
        Assert.Contains(said, ((TextContentBlock)result.Content.Single()).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Call_UnknownTool_NamesThoseThatThereAre()
    {
        await using var client = await ConnectAsync();

        var refused = await Assert.ThrowsAnyAsync<Exception>(async () => await client.CallToolAsync("diagnose", new Dictionary<string, object?>()));

        Assert.Contains("search_catalogue", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rebound.example", null, HttpStatusCode.Forbidden)]
    [InlineData("localhost", "http://rebound.example", HttpStatusCode.Forbidden)]
    [InlineData("localhost", "http://localhost:3000", HttpStatusCode.OK)]
    [InlineData("127.0.0.1", null, HttpStatusCode.OK)]
    public async Task Post_ThroughLoopback_AnswersThisMachineAlone(string host, string? origin, HttpStatusCode status)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/mcp")
        {
            Content = RunningService.Json("""{"jsonrpc":"2.0","id":1,"method":"initialize","params":{"protocolVersion":"2025-06-18","capabilities":{},"clientInfo":{"name":"test","version":"1"}}}"""),
        };
        request.Headers.Host = host;
        request.Headers.Accept.ParseAdd("application/json, text/event-stream");
        if (origin is not null)
            request.Headers.Add("Origin", origin);

        Assert.Equal(status, (await service.Client.SendAsync(request)).StatusCode);
    }

    private static Dictionary<string, object?> Arguments(string json) =>
        JsonDocument.Parse(json).RootElement.EnumerateObject().ToDictionary(member => member.Name, member => (object?)member.Value);

    private Task<McpClient> ConnectAsync() => McpClient.CreateAsync(
        new HttpClientTransport(new HttpClientTransportOptions { Endpoint = new Uri(service.Client.BaseAddress!, "/mcp"), TransportMode = HttpTransportMode.StreamableHttp }));
}
