using System.Text.Json;

namespace AdviceService.Requests;

/// <summary>Reads the id of a line of a batch: a string or an integer, given back as it came.</summary>
internal static class LineIdPart
{
    /// <summary>Reads it.</summary>
    public static JsonElement? Read(JsonValue id)
    {
        switch (id.Json.ValueKind)
        {
            case JsonValueKind.String:
                return id.Text(JsonValue.LongestId) is not null ? id.Json.Clone() : null;
            case JsonValueKind.Number when id.Json.TryGetInt64(out _):
                return id.Json.Clone();
            default:
                id.WrongType<object>($"a string of at most {JsonValue.LongestId} characters or an integer of 64 bits");
                return null;
        }
    }
}
