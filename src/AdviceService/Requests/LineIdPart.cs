using System.Text.Json;

namespace AdviceService.Requests;

/// <summary>Reads the id of a line of a batch: a string or an integer, given back as it came.</summary>
internal static class LineIdPart
{
    /// <summary>Whether it is one.</summary>
    public static bool IsId(JsonElement id) =>
        id.ValueKind == JsonValueKind.String ? id.GetString() is { Length: <= JsonValue.LongestId } text && !text.Contains('\0', StringComparison.Ordinal) : id.ValueKind == JsonValueKind.Number && id.TryGetInt64(out _);

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
