namespace AdviceService.Requests;

/// <summary>Reads trouble codes: the letter of the system, a digit 0 … 3, three hexadecimal digits (ISO 15031-6).</summary>
internal static class TroubleCodePart
{
    private const int Length = 5;

    /// <summary>Reads one code, with or without spaces and capitals, as readers print it and people type it; the rules need not know it.</summary>
    public static string? Read(JsonValue code)
    {
        if (code.Text(JsonValue.LongestId) is not { } written)
            return null;
        var text = written.Replace(" ", "", StringComparison.Ordinal).ToUpperInvariant();
        if (!IsCode(text))
            code.Errors.BadValue(code.At, ErrorCode.InvalidTroubleCode, "Must be P, C, B or U, a digit from 0 to 3 and three hexadecimal digits, such as P0301.");
        return text;
    }

    private static bool IsCode(string text) =>
        text.Length == Length && text[0] is 'P' or 'C' or 'B' or 'U' && text[1] is >= '0' and <= '3' && text[2..].All(char.IsAsciiHexDigit);
}
