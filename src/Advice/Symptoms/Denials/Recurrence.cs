using System.Collections.Frozen;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Denials;

/// <summary>Tells whether a sentence says that something comes and goes or is there all the time.</summary>
internal static class Recurrence
{
    private static readonly FrozenSet<string> Now = WordSet.Of(
        "sometimes intermittent intermittently occasional occasionally random randomly sporadic sporadically periodically");

    private static readonly FrozenSet<string> Always = WordSet.Of("always constantly constant continuously continuous permanently");

    private static readonly string[][] NowAndThen =
    [
        ["now", "and", "then"], ["on", "and", "off"], ["off", "and", "on"], ["comes", "and", "goes"], ["come", "and", "go"], ["at", "times"],
        ["once", "in", "a", "while"], ["every", "so", "often"], ["not", "always"], ["from", "time", "to", "time"], ["every", "now", "and"],
    ];

    private static readonly string[][] EveryTime = [["all", "the", "time"], ["every", "time"], ["the", "whole", "time"]];

    /// <summary>True = comes and goes, false = is there all the time, null = not said.</summary>
    public static bool? Of(IReadOnlyList<RawWord> sentence)
    {
        if (HasAny(sentence, Now) || Array.Exists(NowAndThen, group => Has(sentence, group)))
            return true;
        return HasAny(sentence, Always) || Array.Exists(EveryTime, group => Has(sentence, group)) ? false : null;
    }

    private static bool HasAny(IReadOnlyList<RawWord> sentence, FrozenSet<string> words)
    {
        foreach (var word in sentence)
        {
            if (words.Contains(word.Text))
                return true;
        }

        return false;
    }

    private static bool Has(IReadOnlyList<RawWord> sentence, string[] group)
    {
        for (var start = 0; start + group.Length <= sentence.Count; start++)
        {
            var same = 0;
            while (same < group.Length && sentence[start + same].Text == group[same])
                same++;
            if (same == group.Length)
                return true;
        }

        return false;
    }
}
