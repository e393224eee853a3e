using System.Collections.Frozen;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Denials;

/// <summary>Tells whether a clause says that something is well, altogether or on an occasion.</summary>
/// <param name="words">The words of the text.</param>
internal sealed class WellBeing(IReadOnlyList<Word> words)
{
    /// <summary>A clause with fewer words of its own adds nothing to the one beside it.</summary>
    private const int FewWords = 3;

    private static readonly FrozenSet<string> Calm = WordSet.Of("fine ok okay alright perfect perfectly normal normally good great nice nicely healthy smooth smoothly quiet silent");

    private static readonly FrozenSet<string> AtOnce = WordSet.Of("first right straight instantly easily");

    private static readonly FrozenSet<string> None = WordSet.Of("no none nope never nothing negative");

    /// <summary>Words that say that all is well where they are denied: "never done that", "no bother".</summary>
    private static readonly FrozenSet<string> Happening = WordSet.Of("done happens happen happened problem problems trouble issue issues bother difficulty");

    /// <summary>Words that say where they are denied that an occasion adds nothing: "it is no worse when I brake".</summary>
    private static readonly FrozenSet<string> Differing = WordSet.Of("worse louder stronger different difference change changes bigger harder heavier quicker");

    private readonly Easing easing = new(words);

    /// <summary>Whether the word alone says so: "fine".</summary>
    public static bool IsWordOf(Word word) => Calm.Contains(word.Surface);

    /// <summary>Whether the clause says that all is well on the occasion that it names.</summary>
    public bool IsOn(PhraseMatch occasion)
    {
        for (var i = occasion.First.Index - 1; i >= 0 && words[i].Clause == occasion.First.Clause; i--)
        {
            if (IsCalm(i))
                return true;
            if (words[i].Kind == WordKind.Content && words[i].Term is not ("when" or "only" or "on" or "after" or "over" or "first" or "tim" or "right" or "straight" or "all") && !(i > 0 && words[i - 1].Surface == "as"))
                return Negation.IsAt(words, i) || None.Contains(words[i].Surface) || words[i].Surface == "stops" || (easing.IsAt(i) && !Negation.IsBefore(words, i));
        }

        return Enumerable.Range(occasion.Last.Index + 1, words.Count - occasion.Last.Index - 1)
            .TakeWhile(i => words[i].Clause == occasion.Last.Clause).Any(IsCalm);
    }

    /// <summary>Whether the clause says that the occasion makes no difference.</summary>
    public bool IsTheSameOn(PhraseMatch occasion)
    {
        for (var i = occasion.First.Index - 1; i >= 0 && words[i].Clause == occasion.First.Clause; i--)
        {
            if (Differing.Contains(words[i].Surface) && Negation.IsBefore(words, i))
                return true;
        }

        return false;
    }

    /// <summary>Whether a sentence in which no sign was found says no more than that something is well: "The steering feels fine".</summary>
    public bool IsAllOf(IReadOnlyList<Word> sentence)
    {
        var clauses = sentence.GroupBy(w => w.Clause).ToLookup(clause => clause.Any(w => IsCalm(w.Index)));
        return clauses[true].Any() && !sentence.Any(IsTroubleStated) && clauses[false].All(clause => clause.Count(w => w.Kind == WordKind.Content) < FewWords);
    }

    private bool IsTroubleStated(Word word) => ((word.Is("<trouble>") && !IsDeadStraight(word.Index)) || word.Term == "until") && !Negation.IsBefore(words, word.Index);

    /// <summary>"It is fine", "starts first time", "never done that".</summary>
    private bool IsCalm(int i) => Negation.IsBefore(words, i)
        ? Happening.Contains(words[i].Surface)
        : IsWordOf(words[i]) || IsDeadStraight(i) || (words[i].Term == "start" && i + 1 < words.Count && AtOnce.Contains(words[i + 1].Surface));

    private bool IsDeadStraight(int i) => words[i].Surface == "dead" && i + 1 < words.Count && words[i + 1].Surface == "straight";
}
