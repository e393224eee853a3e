using System.Collections.Frozen;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Denials;

/// <summary>Tells whether a sentence takes back what it said: "there was a clunk until the links were replaced", "I thought it was a misfire but it isn't".</summary>
internal sealed class Retraction(IReadOnlyList<Word> words)
{
    private static readonly FrozenSet<string> Changing = WordSet.Of("""
        replaced replacing replacement changed renewed fixed repaired repair repairs cured cleaned fitted serviced service adjusted aligned balanced swapped tightened topped
        new updated
        """);

    private static readonly FrozenSet<string> Supposing = WordSet.Of("thought think suspected assumed feared guessed supposed expected believed blamed");

    private static readonly FrozenSet<string> Mistaken = WordSet.Of("wrongly mistakenly incorrectly");

    private static readonly FrozenSet<string> Seldom = WordSet.Of("hardly barely scarcely rarely seldom");

    /// <summary>Words of a clause that does no more than say no: "but it isn't", "but that was not the case", "but not any more".</summary>
    private static readonly FrozenSet<string> SayingNo = WordSet.Of("""
        but though however and it this that they is was were are did does do has had been be any more anymore longer now the case so there one to turned out
        """);

    private static readonly FrozenSet<string> Lasting = WordSet.Of("back again still returned after remains");

    /// <summary>Whether what the phrase says is taken back.</summary>
    /// <param name="match">The phrase, which nothing before it denies.</param>
    public bool TakesBack(PhraseMatch match) =>
        EndedWithChange(match) || IsRefuted(match) || IsRuledOut(match) || IsSeldomNow(match) || IsThereNoMore(match) || AreBothGone(match);

    /// <summary>Whether "not" before the phrase only says until when: "it did not stall until last week".</summary>
    public bool IsOnlyUntil(PhraseMatch match) => After(match).TakeWhile(word => word.Clause == match.Last.Clause).Any(word => IsUntil(word.Surface));

    private bool EndedWithChange(PhraseMatch match)
    {
        var after = After(match).ToList();
        var until = after.FindIndex(word => IsUntil(word.Surface) || word.Surface == "before");
        return until >= 0 && after.Skip(until).Any(word => Changing.Contains(word.Surface)) && !after.Exists(word => Lasting.Contains(word.Surface));
    }

    private bool IsRefuted(PhraseMatch match)
    {
        var after = After(match).ToList();
        var supposed = Before(match.First.Index).Any(word => Supposing.Contains(word.Surface));
        if (supposed && after.Exists(word => Mistaken.Contains(word.Surface)))
            return true;
        var next = after.SkipWhile(word => word.Clause == match.Last.Clause).ToList();
        next = [.. next.TakeWhile(word => word.Clause == next[0].Clause)];
        return (supposed || next is [{ Surface: "but" or "though" or "however" or "although" }, ..]) && next.Exists(Negation.Is) && next.TrueForAll(word => Negation.Is(word) || SayingNo.Contains(word.Surface));
    }

    private bool IsRuledOut(PhraseMatch match)
    {
        var after = After(match).TakeWhile(word => word.Clause == match.Last.Clause).SkipWhile(word => word.Kind == WordKind.Filler).Take(2).ToList();
        return after is [{ Term: "rul" }, { Surface: "out" }];
    }

    private bool IsSeldomNow(PhraseMatch match) =>
        words.Take(match.Last.Index).Any(word => word.Clause == match.First.Clause && Seldom.Contains(word.Surface) && !match.Words.Contains(word))
        && words.Skip(match.First.Index + 1).TakeWhile(word => word.Clause == match.First.Clause).Any(word => word.Surface is "anymore" or "more" or "longer");

    /// <summary>"The squeal is no longer there", "isn't there any more".</summary>
    private bool IsThereNoMore(PhraseMatch match)
    {
        var after = After(match).TakeWhile(word => word.Clause == match.Last.Clause).SkipWhile(word => word.Kind == WordKind.Filler).ToList();
        return after is [var first, ..] && Negation.Is(first) && after.Exists(word => word.Surface is "there" or "present") && after.Skip(1).All(word => SayingNo.Contains(word.Surface) || word.Surface == "present");
    }

    /// <summary>"The squeal and the rattle are both gone".</summary>
    private bool AreBothGone(PhraseMatch match)
    {
        var after = After(match).SkipWhile(word => word.Surface != "both").Where(word => word.Kind == WordKind.Content).Take(2).ToList();
        return after is [_, { Surface: "gone" or "fixed" or "cured" or "stopped" or "disappeared" }];
    }

    private static bool IsUntil(string surface) => surface is "until" or "till" or "til";

    /// <summary>The words of the sentence before a place, the nearest first.</summary>
    private IEnumerable<Word> Before(int index)
    {
        for (var i = index - 1; i >= 0 && words[i].Sentence == words[index].Sentence; i--)
            yield return words[i];
    }

    private IEnumerable<Word> After(PhraseMatch match) => words.Skip(match.Last.Index + 1).TakeWhile(word => word.Sentence == match.Last.Sentence);
}
