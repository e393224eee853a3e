using System.Text.Json;
using System.Text.Json.Nodes;
using Advice.Answers;
using AdviceService.Http;
using ModelContextProtocol;
using ModelContextProtocol.Protocol;

namespace AdviceService.Mcp;

/// <summary>The Model Context Protocol over streamable HTTP, without sessions: chat hosts find and call the tools at /mcp.</summary>
internal static class McpEndpoint
{
    private static readonly ToolAnnotations OnlyReads = new() { ReadOnlyHint = true, IdempotentHint = true, DestructiveHint = false, OpenWorldHint = false };

    public static void AddAdviceTools(this IServiceCollection services)
    {
        services.AddSingleton<ToolSchemas>();
        services.AddMcpServer(options => options.ServerInfo = new Implementation { Name = "advice-service", Title = "Vehicle-maintenance advice", Version = AdviceWriter.Program })
            .WithHttpTransport(options => options.Stateless = true)
            .WithListToolsHandler((request, _) => ValueTask.FromResult(List(request.Services!.GetRequiredService<ToolSchemas>())))
            .WithCallToolHandler((request, _) => ValueTask.FromResult(Call(request.Params!, request.Services!.GetRequiredService<AdviceDesk>())));
    }

    public static void UseAdviceTools(this WebApplication app) => app.MapMcp("/mcp");

    private static ListToolsResult List(ToolSchemas schemas) => new()
    {
        Tools =
        [
            .. AdviceTools.All.Select(tool => new Tool
            {
                Name = tool.Name,
                Title = tool.Title,
                Description = tool.Description,
                InputSchema = schemas.Input(tool.Operation),
                OutputSchema = schemas.Output(tool.Operation),
                Annotations = OnlyReads,
            }),
        ],
    };

    private static CallToolResult Call(CallToolRequestParams asked, AdviceDesk desk)
    {
        var tool = AdviceTools.All.FirstOrDefault(tool => tool.Name == asked.Name)
            ?? throw new McpProtocolException($"There is no tool of that name; there are {string.Join(", ", AdviceTools.All.Select(tool => tool.Name))}.", McpErrorCode.InvalidParams);
        var answer = tool.Call(desk, Json(asked.Arguments));
        return answer.Document is { } document
            ? new CallToolResult { StructuredContent = document, Content = [new TextContentBlock { Text = document.GetRawText() }] }
            : new CallToolResult
            {
                IsError = true,
                Content = [new TextContentBlock { Text = string.Join('\n', answer.Errors.Select(error => $"{(error.Pointer.Length == 0 ? "The arguments" : error.Pointer)}: {error.Detail}")) }],
            };
    }

    private static byte[] Json(IDictionary<string, JsonElement>? arguments) =>
        JsonSerializer.SerializeToUtf8Bytes(new JsonObject((arguments ?? new Dictionary<string, JsonElement>()).Select(one => KeyValuePair.Create(one.Key, (JsonNode?)Node(one.Value)))));

    private static JsonNode? Node(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => JsonObject.Create(value),
        JsonValueKind.Array => JsonArray.Create(value),
        JsonValueKind.Null => null,
        _ => System.Text.Json.Nodes.JsonValue.Create(value),
    };
}
