using System.Collections.Frozen;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Denials;

/// <summary>Tells whether a text says that what was noticed has ended, ends each time or is back.</summary>
/// <param name="words">The words of the text.</param>
internal sealed class Ending(IReadOnlyList<Word> words)
{
    /// <summary>Words for what was put right.</summary>
    public static readonly FrozenSet<string> Repairing = WordSet.Of("fixed repaired cured resolved solved eliminated");

    /// <summary>Words for what ended at one time, whatever follows: "the squeal stopped after the service".</summary>
    private static readonly FrozenSet<string> Ended = WordSet.Of("stopped ceased went disappeared vanished cleared");

    private static readonly FrozenSet<string> Returning = WordSet.Of("back again returned still");

    private readonly Easing easing = new(words);

    /// <summary>Whether the words after the phrase say that it has ceased: "is gone", "went away".</summary>
    public bool Ceases(PhraseMatch match)
    {
        var next = Following.Content(words, match.Last.Index + 1, match.Last.Clause);
        if (next >= 0 && Returns(next))
            return false;
        return next >= 0 && ((IsCeasing(next) && !(words[next].Surface == "gone" && !IsSensation(match.Last))) || (match.Last.Term == "light" && words[next].Surface is "out" or "off" && words[next].Index + 1 < words.Count && words[next + 1].Surface == "now"));
    }

    /// <summary>Whether the words after the phrase say that it ceases each time: "goes away after a minute".</summary>
    public bool ComesBack(PhraseMatch match) => Following.Content(words, match.Last.Index + 1, match.Last.Clause) is var next and >= 0
        && words[next].Surface is "goes" or "disappears" or "vanishes" or "fades" or "clears"
        && words.Skip(next + 1).TakeWhile(w => w.Clause == words[next].Clause).Any(w => w.Surface is "after" or "in" or "within" or "once");

    /// <summary>What is heard, smelt, felt or seen goes away; a part that "is gone" is broken or missing.</summary>
    private static bool IsSensation(Word word) => word.Is("<trouble>") || word.Surface.EndsWith("ing", StringComparison.Ordinal)
        || word.Term is "smell" or "light" or "smok" or "misfir" or "steam" or "fume" or "hesit" or "overheat" or "stall" or "play" or "message" or "surg" or "symptom";

    /// <summary>Whether it has ended altogether.</summary>
    public bool Is(PhraseMatch match) => HasEnded(match) || IsNamedAfterwards(match);

    /// <summary>"The squeal stopped after the service", "the leak was fixed", "the smell has not come back".</summary>
    public bool HasEnded(PhraseMatch match)
    {
        var next = Following.Content(words, match.Last.Index + 1, match.Last.Clause);
        if (next < 0 || !IsSensation(match.Last) || Joined(match.Last.Index, next))
            return false;
        if (words[next].Term == "not")
            return Following.Content(words, next + 1, match.Last.Clause) is var verb and >= 0 && (words[verb].Surface == "returned" || (words[verb].Term == "com" && Following.Is(words, verb, "back")));
        if (match.Last.Term == "light" && (words[next].Surface == "goout" || (words[next].Surface == "gone" && Following.Is(words, next, "off"))))
            return !Returns(next);
        if (words[next].Surface == "gone" && next + 1 < words.Count && words[next + 1].Surface is "since" or "now")
            return !Returns(next);
        var ended = (Ended.Contains(words[next].Surface) && (words[next].Surface != "went" || Following.Is(words, next, "away"))) || Repairing.Contains(words[next].Surface);
        return ended && !Returns(next);
    }

    /// <summary>"Stopped after the service, the squealing I mean".</summary>
    private bool IsNamedAfterwards(PhraseMatch match)
    {
        var first = words.First(w => w.Sentence == match.First.Sentence);
        return first.Clause != match.First.Clause && (Ended.Contains(first.Surface) || IsCeasing(first.Index))
            && match.Last.Index + 2 < words.Count && Following.Is(words, match.Last.Index, "i") && words[match.Last.Index + 2].Surface is "mean" or "meant";
    }

    /// <summary>Whether the sentence says after that place that it is back.</summary>
    public bool Returns(int from) =>
        words.Skip(from + 1).TakeWhile(w => w.Sentence == words[from].Sentence).Any(w => Returning.Contains(w.Surface) && !Negation.IsBefore(words, w.Index));

    private bool Joined(int from, int to) => Enumerable.Range(from + 1, to - from - 1).Any(i => words[i].Surface is "and" or "or" or "then");

    private bool IsCeasing(int i) => easing.IsGone(i) && !Negation.IsBefore(words, i);
}
