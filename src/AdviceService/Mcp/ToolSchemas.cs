using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.Swagger;

namespace AdviceService.Mcp;

/// <summary>The schemas of tools, taken from the description of the interface: what it says of a route holds for its tool.</summary>
internal sealed class ToolSchemas(ISwaggerProvider description)
{
    private const string Components = "#/components/schemas/";
    private const string Definitions = "#/$defs/";

    private readonly Lazy<JsonNode> _document = new(() => JsonNode.Parse(
        description.GetSwagger("v1").SerializeAsJsonAsync(OpenApiSpecVersion.OpenApi3_1).GetAwaiter().GetResult())!);

    /// <summary>Schema of the arguments.</summary>
    public JsonElement Input(string operation) => Whole(Find(operation)["requestBody"]!["content"]!["application/json"]!["schema"]!);

    /// <summary>Schema of the answer.</summary>
    public JsonElement Output(string operation) => Whole(Find(operation)["responses"]!["200"]!["content"]!["application/json"]!["schema"]!);

    private JsonNode Find(string operation) => _document.Value["paths"]!.AsObject().SelectMany(path => path.Value!.AsObject())
        .Select(verb => verb.Value!).First(verb => (string?)verb["operationId"] == operation);

    /// <summary>A schema that needs nothing beside itself: everything it refers to becomes a definition of its own.</summary>
    private JsonElement Whole(JsonNode schema)
    {
        var all = _document.Value["components"]!["schemas"]!;
        var root = all[Name(schema)]!.DeepClone().AsObject();
        var needed = new SortedDictionary<string, JsonNode>(StringComparer.Ordinal);
        Collect(root);
        root["$defs"] = new JsonObject(needed.Select(one => KeyValuePair.Create(one.Key, (JsonNode?)one.Value)));
        return JsonSerializer.SerializeToElement(root);

        void Collect(JsonNode? node)
        {
            switch (node)
            {
                case JsonObject one when one["$ref"] is { } reference:
                    var name = Name(one);
                    one["$ref"] = Definitions + name;
                    if (!needed.ContainsKey(name))
                        Collect(needed[name] = all[name]!.DeepClone());
                    break;
                case JsonObject one:
                    foreach (var member in one)
                        Collect(member.Value);
                    break;
                case JsonArray list:
                    foreach (var item in list)
                        Collect(item);
                    break;
            }
        }
    }

    private static string Name(JsonNode schema) => ((string)schema["$ref"]!)[Components.Length..];
}
