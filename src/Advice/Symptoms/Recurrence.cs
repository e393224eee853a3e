using System.Collections.Frozen;

namespace Advice.Symptoms;

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
        if (sentence.Any(w => Now.Contains(w.Text)) || NowAndThen.Any(g => Has(sentence, g)))
            return true;
        return sentence.Any(w => Always.Contains(w.Text)) || EveryTime.Any(g => Has(sentence, g)) ? false : null;
    }

    private static bool Has(IReadOnlyList<RawWord> sentence, string[] group) =>
        Enumerable.Range(0, Math.Max(0, sentence.Count - group.Length + 1)).Any(i => group.Index().All(g => sentence[i + g.Index].Text == g.Item));
}
