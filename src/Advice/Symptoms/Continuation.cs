using System.Collections.Frozen;
using Advice.Symptoms.Words;

namespace Advice.Symptoms;

/// <summary>Tells sentences which only go on about the sign before: "By the afternoon it had gone off", "It came back a week later".</summary>
internal static class Continuation
{
    private static readonly FrozenSet<string> Passing = WordSet.Of("gone went goes goout disappeared disappears vanished vanishes cleared clears faded fades ceased");

    private static readonly FrozenSet<string> Returning = WordSet.Of("back again returned returns reappeared reappears");

    /// <summary>Words that name the sign or a time and say nothing else.</summary>
    private static readonly FrozenSet<string> Empty = WordSet.Of("""
        off away out up come comes came coming start starts started restarted returning go on itself own accord by time times once more but and then now since only just next same later soon straight right
        noise sound smell light lamp warning symptom problem issue thing
        morning afternoon evening night lunch lunchtime noon midday teatime today yesterday tomorrow overnight weekend monday tuesday wednesday thursday friday saturday sunday
        second seconds minute minutes hour hours day days week weeks month months while few couple one two three four five six ten twenty half first
        after before within until when not home work
        """);

    private static readonly FrozenSet<string> Things = WordSet.Of("it that this noise sound smell light lamp warning symptom problem issue");

    /// <summary>Whether the sentence says no more than that it is back.</summary>
    public static bool Returns(IReadOnlyList<Word> sentence) =>
        sentence.Any(word => Returning.Contains(word.Surface)) && !sentence.Any(Negation.Is) && SaysNothingElse(sentence);

    /// <summary>Whether the sentence says no more than that it went or is back.</summary>
    public static bool Is(IReadOnlyList<Word> sentence) =>
        sentence.Any(word => Passing.Contains(word.Surface) || Returning.Contains(word.Surface)) && SaysNothingElse(sentence);

    private static bool SaysNothingElse(IReadOnlyList<Word> sentence) =>
        sentence.All(word => word.Kind != WordKind.Content || Passing.Contains(word.Surface) || Returning.Contains(word.Surface) || Empty.Contains(word.Surface) || char.IsDigit(word.Surface[0]))
        && sentence.FirstOrDefault(word => Things.Contains(word.Surface) || word.Term == "i")?.Term != "i";
}
