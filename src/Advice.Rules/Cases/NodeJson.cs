using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Advice.Rules.Files;

namespace Advice.Rules.Cases;

/// <summary>YAML as the JSON that a caller would send.</summary>
internal static class NodeJson
{
    /// <summary>The same value in JSON. A plain scalar is a number, a truth value or null where JSON reads it as one.</summary>
    public static JsonElement From(Node node) => JsonSerializer.SerializeToElement(Json(node));

    /// <summary>Where the value of a JSON Pointer stands; the nearest value around it where the pointer leads further.</summary>
    public static Place PlaceOf(string pointer, Node node)
    {
        foreach (var token in pointer.Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            var name = token.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
            var inner = node switch
            {
                MappingNode mapping => mapping[name],
                ListNode list when int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var i) => list.Items.ElementAtOrDefault(i),
                _ => null,
            };
            if (inner is null)
                break;
            node = inner;
        }

        return node.Place;
    }

    private static JsonNode? Json(Node node) => node switch
    {
        MappingNode mapping => new JsonObject(mapping.Members.Select(member => KeyValuePair.Create(member.Key.Value, Json(member.Value)))),
        ListNode list => new JsonArray([.. list.Items.Select(Json)]),
        ScalarNode { Plain: true, Value: "" or "null" } => null,
        ScalarNode { Plain: true, Value: "true" } => JsonValue.Create(true),
        ScalarNode { Plain: true, Value: "false" } => JsonValue.Create(false),
        ScalarNode { Plain: true } scalar => Number(scalar.Value) ?? JsonValue.Create(scalar.Value),
        ScalarNode scalar => JsonValue.Create(scalar.Value),
        _ => throw new ArgumentOutOfRangeException(nameof(node), node.Shape, null),
    };

    private static JsonValue? Number(string text)
    {
        // Most are words, and refusing them by an exception takes longer than all the rest.
        if (text is not ['-' or (>= '0' and <= '9'), ..])
            return null;
        try
        {
            return JsonNode.Parse(text) is JsonValue value && value.GetValueKind() == JsonValueKind.Number ? value : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
