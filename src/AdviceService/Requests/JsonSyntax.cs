using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace AdviceService.Requests;

/// <summary>Says in our own words why a text is no JSON.</summary>
internal static class JsonSyntax
{
    private const int EscapeLength = 6;

    /// <summary>There is nothing to read.</summary>
    public static RequestError Empty { get; } = new("", ErrorCode.EmptyBody, "The body is empty; it must be a JSON object.");

    /// <summary>What is wrong with the text before its grammar is looked at; null where nothing is.</summary>
    public static RequestError? FaultOf(ReadOnlySpan<byte> text)
    {
        if (text.IndexOfAnyExcept(" \t\r\n"u8) < 0)
            return Empty;
        if (!Utf8.IsValid(text))
            return At(text, FirstInvalid(text), ErrorCode.InvalidText, "The body is not UTF-8");
        var half = FirstHalfPair(text);
        return half < 0 ? null : At(text, half, ErrorCode.InvalidText, "Half of a surrogate pair is escaped");
    }

    /// <summary>What the parser found wrong.</summary>
    public static RequestError FaultOf(ReadOnlySpan<byte> text, JsonException found) => IsTooDeep(text)
        ? new RequestError("", ErrorCode.TooDeep, $"The body is nested deeper than {RequestBody.MaxDepth} levels.")
        : Place(ErrorCode.MalformedJson, "The body is not well-formed JSON", found.LineNumber ?? 0, found.BytePositionInLine ?? 0);

    private static bool IsTooDeep(ReadOnlySpan<byte> text)
    {
        // The same parser without the limit tells whether depth was what stopped it.
        var reader = new Utf8JsonReader(text, new JsonReaderOptions { MaxDepth = int.MaxValue });
        try
        {
            while (reader.Read())
            {
                if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray && reader.CurrentDepth >= RequestBody.MaxDepth)
                    return true;
            }
        }
        catch (JsonException)
        {
            // It stops where the first parser stopped.
        }

        return false;
    }

    private static int FirstInvalid(ReadOnlySpan<byte> text)
    {
        var at = 0;
        while (Rune.DecodeFromUtf8(text[at..], out _, out var length) == OperationStatus.Done)
            at += length;
        return at;
    }

    private static int FirstHalfPair(ReadOnlySpan<byte> text)
    {
        for (var at = 0; ;)
        {
            var next = text[at..].IndexOf((byte)'\\');
            if (next < 0)
                return -1;
            at += next;
            if (char.IsHighSurrogate(Escaped(text[at..])) && at + EscapeLength <= text.Length && char.IsLowSurrogate(Escaped(text[(at + EscapeLength)..])))
                at += 2 * EscapeLength;
            else if (char.IsSurrogate(Escaped(text[at..])))
                return at;
            else
                at = Math.Min(at + 2, text.Length);
        }
    }

    private static char Escaped(ReadOnlySpan<byte> text) =>
        text.Length >= EscapeLength && text.StartsWith("\\u"u8)
        && ushort.TryParse(text[2..EscapeLength], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var unit)
            ? (char)unit
            : '\0';

    private static RequestError At(ReadOnlySpan<byte> text, int at, string code, string what)
    {
        var before = text[..at];
        return Place(code, what, before.Count((byte)'\n'), at - before.LastIndexOf((byte)'\n') - 1);
    }

    private static RequestError Place(string code, string what, long line, long position) =>
        new("", code, string.Create(CultureInfo.InvariantCulture, $"{what}: see line {line + 1}, byte {position + 1}."));
}
