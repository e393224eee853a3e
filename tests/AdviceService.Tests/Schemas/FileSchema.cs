using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace AdviceService.Tests.Schemas;

/// <summary>The committed schemas of rule and case files.</summary>
internal static class FileSchema
{
    public static string Folder { get; } = Path.Combine(Repository.Root, "rules");

    public static JsonObject RuleText { get; } = Parse("rules");

    public static JsonObject CaseText { get; } = Parse("cases");

    public static JsonSchema Rules { get; } = JsonSchema.FromText(RuleText.ToJsonString());

    public static JsonSchema Cases { get; } = JsonSchema.FromText(CaseText.ToJsonString());

    /// <summary>Whether a document is right by a schema. An empty file holds nothing, which is right.</summary>
    public static bool Takes(JsonSchema schema, JsonNode? document) =>
        document is null || schema.Evaluate(JsonSerializer.SerializeToElement(document), new EvaluationOptions { RequireFormatValidation = true }).IsValid;

    private static JsonObject Parse(string name) => JsonNode.Parse(File.ReadAllText(Path.Combine(Folder, $"{name}.schema.json")))!.AsObject();
}
