using System.Text.Json.Nodes;
using Json.Schema;

namespace AdviceService.Tests.Http;

/// <summary>The committed OpenAPI document, whose component schemas are JSON Schema 2020-12.</summary>
internal static class InterfaceDescription
{
    public static string File { get; } = Path.Combine(Repository.Root, "openapi", "advice.v1.json");

    private static readonly JsonNode Document = JsonNode.Parse(System.IO.File.ReadAllText(File))!;

    /// <summary>The schema of a component with all that it refers to.</summary>
    public static JsonSchema Schema(string name)
    {
        var root = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$ref"] = $"#/$defs/{name}",
            ["$defs"] = JsonNode.Parse(Document["components"]!["schemas"]!.ToJsonString().Replace("#/components/schemas/", "#/$defs/", StringComparison.Ordinal)),
        };
        return JsonSchema.FromText(root.ToJsonString());
    }
}
