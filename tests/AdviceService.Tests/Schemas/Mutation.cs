using System.Text.Json.Nodes;

namespace AdviceService.Tests.Schemas;

/// <summary>A document changed in one place: a value left out, replaced, or a mapping with a member more.</summary>
/// <param name="Path">The place.</param>
/// <param name="Value">What stands there instead; null where it is left out.</param>
/// <param name="Added">Whether a mapping there gets a member more instead.</param>
internal sealed record Mutation(string Path, string? Value, bool Added)
{
    private static readonly IReadOnlyList<string?> Values =
    [
        null, "-1", "0", "1", "0.4", "1e9", "\"a\"", "\"Two Words\"", "\"P0301\"", "\"often\"", "\"stop\"", "\"owner\"", "true", "[]", "{}", "[\"a\"]", "[\"a\",\"a\"]",
        "{\"id\":\"a\"}",
    ];

    /// <summary>All of them, of a document.</summary>
    public static IReadOnlyList<Mutation> Of(JsonNode sound) =>
        [.. Paths(sound, "").Skip(1).SelectMany(path => Values.Select(value => new Mutation(path, value, false)).Append(new(path, null, true)))];

    /// <summary>The document with the change.</summary>
    public JsonNode In(JsonNode sound)
    {
        var root = sound.DeepClone();
        var tokens = Path.Split('/')[1..];
        var parent = tokens[..^1].Aggregate(root, (node, token) => node is JsonArray list ? list[int.Parse(token, null)]! : node[token]!);
        var last = tokens[^1];
        var own = parent is JsonArray items ? items[int.Parse(last, null)] : parent[last];
        if (Added && own is JsonObject mapping)
            mapping["no-such-member"] = 1;
        else if (parent is JsonArray array && Value is null)
            array.RemoveAt(int.Parse(last, null));
        else if (parent is JsonArray list)
            list[int.Parse(last, null)] = JsonNode.Parse(Value!);
        else if (Value is null)
            parent.AsObject().Remove(last);
        else
            parent[last] = JsonNode.Parse(Value);
        return root;
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Path} {(Added ? "with a member more" : Value is null ? "left out" : $"as {Value}")}";

    private static IEnumerable<string> Paths(JsonNode? node, string path) => (node switch
    {
        JsonObject mapping => mapping.SelectMany(member => Paths(member.Value, $"{path}/{member.Key}")),
        JsonArray list => list.SelectMany((item, i) => Paths(item, $"{path}/{i}")),
        _ => [],
    }).Prepend(path);
}
