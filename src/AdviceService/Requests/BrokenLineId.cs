using System.Text.Json;

namespace AdviceService.Requests;

/// <summary>Finds the id of a line that is no JSON further on, so that the caller learns which vehicle got no answer.</summary>
internal static class BrokenLineId
{
    /// <summary>The id that stands before the break; null where there is none or it is none.</summary>
    public static JsonElement? Find(ReadOnlySpan<byte> line)
    {
        var reader = new Utf8JsonReader(line, new JsonReaderOptions { MaxDepth = RequestBody.MaxDepth });
        try
        {
            while (reader.Read())
            {
                if (reader is { CurrentDepth: 1, TokenType: JsonTokenType.PropertyName } && reader.ValueTextEquals("id"u8) && reader.Read())
                    return JsonElement.ParseValue(ref reader) is var id && LineIdPart.IsId(id) ? id : null;
            }
        }
        catch (Exception broken) when (broken is JsonException or InvalidOperationException)
        {
            // It breaks before the id, or within it.
        }

        return null;
    }
}
