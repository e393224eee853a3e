using System.Text.Json.Nodes;
using Json.Schema;

namespace AdviceService.Tests.Http;

/// <summary>The committed OpenAPI document, whose component schemas are JSON Schema 2020-12.</summary>
internal static class InterfaceDescription
{
    public static string File { get; } = Path.Combine(Repository.Root, "openapi", "advice.v1.json");

    private static readonly JsonNode Document = JsonNode.Parse(System.IO.File.ReadAllText(File))!;

    /// <summary>The schema of a component with all that it refers to.</summary>
    public static JsonSchema Schema(string name) => Rooted(new JsonObject { ["$ref"] = $"#/$defs/{name}" });

    /// <summary>The schema of what is posted to an address.</summary>
    public static JsonSchema Posted(string address) =>
        Rooted((JsonObject)JsonNode.Parse(Inner(Document["paths"]![address]!["post"]!["requestBody"]!["content"]!["application/json"]!["schema"]!))!);

    private static JsonSchema Rooted(JsonObject schema)
    {
        var root = new JsonObject(schema.DeepClone().AsObject().Select(member => KeyValuePair.Create(member.Key, member.Value?.DeepClone())))
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$defs"] = JsonNode.Parse(Inner(Document["components"]!["schemas"]!)),
        };
        return JsonSchema.FromText(root.ToJsonString());
    }

    private static string Inner(JsonNode node) => node.ToJsonString().Replace("#/components/schemas/", "#/$defs/", StringComparison.Ordinal);
}
