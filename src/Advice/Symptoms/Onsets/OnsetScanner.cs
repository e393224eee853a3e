using System.Collections.Frozen;
using System.Globalization;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Onsets;

/// <summary>Finds since when: "for two weeks", "3 months ago", "since yesterday", "last week", "since the service".</summary>
internal static class OnsetScanner
{
    private const int LongestEvent = 5;

    private static readonly FrozenDictionary<string, int> Units = new Dictionary<string, int>
    {
        ["day"] = 1,
        ["days"] = 1,
        ["week"] = 7,
        ["weeks"] = 7,
        ["month"] = 30,
        ["months"] = 30,
        ["year"] = 365,
        ["years"] = 365,
        ["yrs"] = 365,
        ["hour"] = 0,
        ["hours"] = 0,
        ["winter"] = 365,
        ["summer"] = 365,
        ["weekend"] = 7,
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<string, int> Numbers = new Dictionary<string, int>
    {
        ["a"] = 1,
        ["an"] = 1,
        ["one"] = 1,
        ["two"] = 2,
        ["couple"] = 2,
        ["three"] = 3,
        ["few"] = 3,
        ["several"] = 4,
        ["four"] = 4,
        ["five"] = 5,
        ["six"] = 6,
        ["seven"] = 7,
        ["eight"] = 8,
        ["nine"] = 9,
        ["ten"] = 10,
        ["twelve"] = 12,
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<string, int> Days = new Dictionary<string, int>
    {
        ["today"] = 0,
        ["yesterday"] = 1,
        ["recently"] = 14,
        ["lately"] = 14,
    }.ToFrozenDictionary();

    /// <summary>All that are found, in order; they do not overlap.</summary>
    public static List<Onset> Scan(string text, IReadOnlyList<RawWord> words)
    {
        var found = new List<Onset>();
        for (var i = 0; i < words.Count; i++)
        {
            var (length, days) = At(words, i);
            if (length == 0)
                continue;
            var (first, last) = (words[i], words[i + length - 1]);
            found.Add(new(Excerpt.Of(text, first.Start, last.End), first.Start, last.End, first.Sentence, first.Clause, days));
            i += length - 1;
        }

        return found;
    }

    private static (int Length, int? Days) At(IReadOnlyList<RawWord> words, int i)
    {
        var word = words[i].Text;
        if (Days.TryGetValue(word, out var day))
            return (1, day);
        if (Distance(words, i) is > 0 and var far)
            return (far, null);
        if (word is "since")
            return Span(words, i + 1) is { Length: > 0 } span ? WithAgo(words, i, span) : Event(words, i);
        if (word is "for" or "past" or "last" or "about" or "over" or "this" && Span(words, i + 1, openEnd: word is "last" or "this" or "past") is { Length: > 0 } lasting)
            return WithAgo(words, i, word is "this" ? (lasting.Length, 0) : lasting);
        return Span(words, i) is { Length: > 0 } ago && Is(words, i + ago.Length, "ago") ? (ago.Length + 1, ago.Days) : (0, null);
    }

    /// <summary>How many words say a distance: "500 miles ago", "for the last 200 km".</summary>
    private static int Distance(IReadOnlyList<RawWord> words, int i)
    {
        var number = i;
        while (number < words.Count && number < i + 4 && words[number].Text is "since" or "for" or "the" or "last" or "past" or "about" or "over" or "in")
            number++;
        var length = number < words.Count ? DistanceScanner.At(words, number).Length : 0;
        var ago = Is(words, number + length, "ago");
        return length > 0 && (ago || (number > i && words[i].Text is "since" or "for" or "last" or "past")) ? number - i + length + (ago ? 1 : 0) : 0;
    }

    /// <summary>The word before a span, the span, and "ago" where it follows.</summary>
    private static (int Length, int? Days) WithAgo(IReadOnlyList<RawWord> words, int i, (int Length, int? Days) span) =>
        (span.Length + (Is(words, i + 1 + span.Length, "ago") ? 2 : 1), span.Days);

    /// <summary>"Two weeks", "the last few months", "a couple of days"; with an open end "week" alone.</summary>
    private static (int Length, int? Days) Span(IReadOnlyList<RawWord> words, int start, bool openEnd = false)
    {
        int i = start, number = openEnd ? 1 : -1;
        for (; i < words.Count && i < start + LongestEvent; i++)
        {
            var word = words[i].Text;
            if (Days.TryGetValue(word, out var day))
                return (i - start + 1, day);
            if (Units.TryGetValue(word, out var unit) && number >= 0)
                return (i - start + 1, number * unit);
            if (word is "last" or "past" or "this")
                number = Math.Max(number, 1);
            else if (Numbers.TryGetValue(word, out var named))
                number = Math.Max(named, number);
            else if (word.Length <= 3 && int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var digits))
                number = digits;
            else if (word is not ("the" or "of" or "about" or "over"))
                return (0, null);
        }

        return (0, null);
    }

    private static (int Length, int? Days) Event(IReadOnlyList<RawWord> words, int since)
    {
        var end = since + 1;
        while (end < words.Count && end <= since + LongestEvent && words[end].Clause == words[since].Clause)
            end++;
        return (end - since > 1 ? end - since : 0, null);
    }

    private static bool Is(IReadOnlyList<RawWord> words, int i, string word) => i < words.Count && words[i].Text == word;
}
