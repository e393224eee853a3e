using System.Globalization;
using Advice.Findings;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Onsets;

/// <summary>Finds how far ago: "5,000 miles ago", "10k km since", "in the last 300 miles".</summary>
internal static class DistanceScanner
{
    /// <summary>The distances that are said to lie back, in order, with the sentence and clause of each.</summary>
    public static List<(int Sentence, int Clause, double Km)> Scan(IReadOnlyList<RawWord> words)
    {
        var found = new List<(int Sentence, int Clause, double Km)>();
        for (var i = 0; i < words.Count; i++)
        {
            var (length, km) = At(words, i);
            if (length == 0)
                continue;
            var (before, after) = (i > 0 ? words[i - 1].Text : "", i + length < words.Count ? words[i + length].Text : "");
            if (after is "ago" or "back" or "since" or "earlier" || before is "last" or "past")
                found.Add((words[i].Sentence, words[i].Clause, km));
            i += length - 1;
        }

        return found;
    }

    /// <summary>The distance that begins with a word, and of how many words it is; 0 where there is none.</summary>
    public static (int Length, double Km) At(IReadOnlyList<RawWord> words, int start)
    {
        var digits = words[start].Text;
        var next = start + 1;
        var thousands = digits.EndsWith('k') ? 1000 : 1;
        if (thousands > 1)
            digits = digits[..^1];
        if (digits.Length is 0 or > 6 || !int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            return (0, 0);
        if (thousands == 1 && digits.Length <= 3 && next < words.Count && words[next].Text is { Length: 3 } rest
            && int.TryParse(rest, NumberStyles.None, CultureInfo.InvariantCulture, out var low))
            (number, next) = ((1000 * number) + low, next + 1);
        else if (next < words.Count && words[next].Text is "k" or "thousand")
            (thousands, next) = (1000, next + 1);
        return next >= words.Count ? (0, 0) : words[next].Text switch
        {
            "miles" or "mile" or "mi" => (next + 1 - start, UnitConversion.Convert((double)number * thousands, "mi", "km")!.Value),
            "km" or "kms" or "kilometers" or "kilometres" => (next + 1 - start, (double)number * thousands),
            _ => (0, 0),
        };
    }
}
