namespace AdviceService.Requests;

/// <summary>Reads trouble codes: the letter of the system, a digit 0 … 3, three hexadecimal digits, and two more for the failure type (ISO 15031-6).</summary>
internal static class TroubleCodePart
{
    private const int Length = 5;
    private const int LengthWithFailureType = Length + 2;

    /// <summary>Reads one code, with or without spaces, capitals and separator, as readers print it and people type it; the rules need not know it.</summary>
    /// <returns>As P0301 or P0301-1A.</returns>
    public static string? Read(JsonValue code)
    {
        if (code.Text(JsonValue.LongestId) is not { } written)
            return null;
        var text = new string([.. written.Where(one => one is not (' ' or '-' or ':'))]).ToUpperInvariant();
        if (!IsCode(text))
        {
            code.Errors.BadValue(
                code.At, ErrorCode.InvalidTroubleCode,
                "Must be P, C, B or U, a digit from 0 to 3 and three hexadecimal digits, such as P0301, and may have a failure type of two more, such as P0301-1A.");
        }

        return text.Length > Length ? $"{text[..Length]}-{text[Length..]}" : text;
    }

    private static bool IsCode(string text) =>
        text.Length is Length or LengthWithFailureType && text[0] is 'P' or 'C' or 'B' or 'U' && text[1] is >= '0' and <= '3' && text[2..].All(char.IsAsciiHexDigit);
}
