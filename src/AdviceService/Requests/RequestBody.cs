using System.Runtime.InteropServices;
using System.Text.Json;

namespace AdviceService.Requests;

/// <summary>Reads a whole body: strict JSON (RFC 8259) in UTF-8 whose root is an object.</summary>
internal static class RequestBody
{
    /// <summary>The deepest nesting; no request needs half of it.</summary>
    public const int MaxDepth = 16;

    private static readonly JsonDocumentOptions Strict = new()
    {
        AllowTrailingCommas = false,
        CommentHandling = JsonCommentHandling.Disallow,
        MaxDepth = MaxDepth,
    };

    /// <summary>Reads bytes.</summary>
    public static ReadResult<T> Read<T>(ReadOnlyMemory<byte> utf8Json, Func<ObjectReader, T?> read)
        where T : class
    {
        if (JsonSyntax.FaultOf(utf8Json.Span) is { } fault)
            return Refuse<T>(fault);
        try
        {
            using var document = JsonDocument.Parse(utf8Json, Strict);
            return ReadRoot(document.RootElement, read);
        }
        catch (JsonException exception)
        {
            return Refuse<T>(JsonSyntax.FaultOf(utf8Json.Span, exception));
        }
    }

    /// <summary>Reads an element that was parsed elsewhere.</summary>
    public static ReadResult<T> Read<T>(JsonElement json, Func<ObjectReader, T?> read)
        where T : class
    {
        if (json.ValueKind == JsonValueKind.Undefined)
            return Refuse<T>(JsonSyntax.Empty);
        if (JsonSyntax.FaultOf(JsonMarshal.GetRawUtf8Value(json)) is { } fault)
            return Refuse<T>(fault);
        return ReadRoot(json, read);
    }

    private static ReadResult<T> ReadRoot<T>(JsonElement json, Func<ObjectReader, T?> read)
        where T : class
    {
        var errors = new ErrorList();
        return errors.Result(new JsonValue(json, JsonPointer.Root, errors).Object(read));
    }

    private static ReadResult<T> Refuse<T>(RequestError fault)
        where T : class => new(null, [fault], StatusCodes.Status400BadRequest);
}
