using Advice.Symptoms.Words;

namespace Advice.Symptoms.Mentions;

/// <summary>
/// Finds trouble codes: a letter and four hexadecimal digits, as in ISO 15031-6, also where the letter was left out or parted, and the two digits of
/// the failure type behind them.
/// </summary>
internal static class TroubleCodeScanner
{
    private const int Digits = 4;
    private const int FailureTypeDigits = 2;

    /// <summary>The codes in the words of a text, such as P0301 or P0301-1A, with the number of their sentence, in order, each once.</summary>
    public static List<(string Code, int Sentence)> Scan(string text, IReadOnlyList<RawWord> words)
    {
        var codes = new List<(string Code, int Sentence)>();
        var named = words.Any(w => IsNaming(w.Text));
        var follows = false;
        for (var i = 0; i < words.Count; i++)
        {
            var word = words[i].Text;
            var code = Whole(word, named) ?? Joined(word, named);
            if (code is null && word is "p" or "b" or "c" or "u" && i + 1 < words.Count && Whole(word + words[i + 1].Text, named) is { } parted)
                (code, i) = (parted, i + 1);
            if (code is null && follows && IsDigits(word) && word[0] == '0')
                code = "P" + word.ToUpperInvariant();
            if (code?.Length == Digits + 1 && FailureType(text, words, i) is { } type)
                (code, i) = ($"{code}-{type}", i + 1);
            if (code is not null && codes.All(c => c.Code != code))
                codes.Add((code, words[i].Sentence));
            follows = code is not null || IsNaming(word) || (follows && word is "and" or "is" or "of" or "was" or "number");
        }

        return codes;
    }

    /// <summary>A code in one word. Only P codes stand for themselves; others need the mention of codes, for they also name things.</summary>
    private static string? Whole(string word, bool named)
    {
        if (word.Length != Digits + 1 || !(word[0] == 'p' || (named && word[0] is 'b' or 'c' or 'u')))
            return null;
        // The letter O is often typed for the digit.
        var digits = word[1..].Replace('o', '0');
        return IsDigits(digits) && digits[0] <= '3' && word.Any(char.IsAsciiDigit)
            ? (word[0] + digits).ToUpperInvariant()
            : null;
    }

    /// <summary>A code with its failure type in one word.</summary>
    private static string? Joined(string word, bool named) =>
        word.Length == Digits + 1 + FailureTypeDigits && Whole(word[..(Digits + 1)], named) is { } code && word[(Digits + 1)..].All(char.IsAsciiHexDigit)
            ? $"{code}-{word[(Digits + 1)..].ToUpperInvariant()}"
            : null;

    /// <summary>The failure type in the word that a hyphen or colon joins to the code at that place.</summary>
    private static string? FailureType(string text, IReadOnlyList<RawWord> words, int at) =>
        at + 1 < words.Count && words[at + 1] is { Text.Length: FailureTypeDigits } next && next.Start == words[at].End + 1
            && text[words[at].End] is '-' or ':' && next.Text.All(char.IsAsciiHexDigit)
            ? next.Text.ToUpperInvariant()
            : null;

    private static bool IsDigits(string word) => word.Length == Digits && word.All(char.IsAsciiHexDigit) && char.IsAsciiDigit(word[0]);

    private static bool IsNaming(string word) => word is "code" or "codes" or "dtc" or "dtcs" or "obd" or "obd2" or "obdii";
}
