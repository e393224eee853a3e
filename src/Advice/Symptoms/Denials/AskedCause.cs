using System.Collections.Frozen;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Denials;

/// <summary>
/// Tells what a text only asks after as the cause from what it tells: "is that the head gasket?", "is my battery dying?", "wondering if it is the turbo".
/// A noise, a shaking or a leak is noticed, whatever is asked about it.
/// </summary>
/// <param name="text">The text.</param>
/// <param name="words">Its words.</param>
internal sealed class AskedCause(string text, IReadOnlyList<Word> words)
{
    private static readonly FrozenSet<string> Asking = WordSet.Of("is are was were could can might may would will");

    /// <summary>Verbs that ask with a thing as subject, "has the clutch gone", or with "need", "does it need a clutch".</summary>
    private static readonly FrozenSet<string> AskingOfAThing = WordSet.Of("is are was were could might would has have does do did");

    private static readonly FrozenSet<string> Pronouns = WordSet.Of("it that this these those they");

    private static readonly FrozenSet<string> Determiners = WordSet.Of("the my our his her their these this that");

    private static readonly FrozenSet<string> Wondering = WordSet.Of("wonder wonders wondering wondered think reckon suppose believe guess unsure sure know chance possible idea");

    /// <summary>Words of questions about what is taken for granted.</summary>
    private static readonly FrozenSet<string> Inquiring = WordSet.Of("why how what when where which who");

    /// <summary>Words that stand before such a question and say nothing.</summary>
    private static readonly FrozenSet<string> Leading = WordSet.Of("so and or but then also well just maybe perhaps please hi hello");

    /// <summary>Words beside the thing that is asked after which tell nothing of their own.</summary>
    private static readonly FrozenSet<string> Vague = WordSet.Of("""
        sign just only possibly possible maybe likely actually perhaps probably down due related something anything do caused because fault problem case first new old need needs
        replacing think reckon you we it again now already gone going dying done for good or on its way out
        """);

    /// <summary>Whether the text only asks whether it is what the phrase says.</summary>
    public bool Is(PhraseMatch match)
    {
        if (match.Words.Any(word => word.Is("<noise>") || word.Is("<shakes>") || word.Is("<leaks>")))
            return false;
        var start = Start(match.First);
        return start < match.First.Index
            && ((Asking.Contains(words[start].Surface) && Pronouns.Contains(words[start + 1].Surface) && IsNamedAtOnce(start + 1, match))
                || (AskingOfAThing.Contains(words[start].Surface) && IsAll(start, match) && (Determiners.Contains(words[start + 1].Surface) || Needs(start, match)))
                || IsWondered(start, match))
            || IsNoMoreThanNamed(match);
    }

    /// <summary>Where its clause begins, or the one that a clause with "or" goes on.</summary>
    private int Start(Word word)
    {
        var first = First(word.Index, word.Clause);
        while (words[first].Surface == "or" && first > 0 && words[first - 1].Sentence == word.Sentence)
            first = First(first - 1, words[first - 1].Clause);
        while (first < word.Index && Leading.Contains(words[first].Surface))
            first++;
        return first;
    }

    private int First(int index, int clause)
    {
        while (index > 0 && words[index - 1].Clause == clause)
            index--;
        return index;
    }

    /// <summary>"Is it possibly the turbo", not "is it bad that the lamp is on".</summary>
    private bool IsNamedAtOnce(int pronoun, PhraseMatch match)
    {
        for (var i = pronoun + 1; i < match.First.Index; i++)
        {
            if (words[i].Surface is "that" or "if" || !IsEmpty(words[i]))
                return false;
        }

        return true;
    }

    /// <summary>"Do you think it is the turbo", "wondering if the battery is dying".</summary>
    private bool IsWondered(int start, PhraseMatch match)
    {
        var asks = match.First.Index - 1;
        while (asks >= start && !Wondering.Contains(words[asks].Surface) && IsEmpty(words[asks]))
            asks--;
        if (asks < start || !Wondering.Contains(words[asks].Surface))
            return false;
        var open = words[asks].Surface.StartsWith("wonder", StringComparison.Ordinal) || words.Skip(asks).Take(match.First.Index - asks).Any(w => w.Surface is "if" or "whether")
            || (asks >= 2 && words[asks - 1].Surface is "you" or "any");
        return open && IsAll(asks, match);
    }

    private static bool IsEmpty(Word word) => word.Kind != WordKind.Content || Vague.Contains(word.Surface) || word.Term == "when";

    private bool Needs(int start, PhraseMatch match) =>
        words.Skip(start).Take(match.First.Index - start).Any(word => word.Surface is "need" or "needs");

    /// <summary>Whether the clause says nothing beyond the phrase.</summary>
    private bool IsAll(int from, PhraseMatch match) => words.Skip(from + 1).TakeWhile(word => word.Index <= match.Last.Index || word.Clause == match.Last.Clause)
        .All(word => match.Words.Contains(word) || IsEmpty(word));

    /// <summary>"Head gasket?", not "Why the rising oil?"</summary>
    private bool IsNoMoreThanNamed(PhraseMatch match)
    {
        var sentence = words.Where(word => word.Sentence == match.First.Sentence).ToList();
        return sentence.TrueForAll(word => (match.Words.Contains(word) || IsEmpty(word)) && !Inquiring.Contains(word.Surface))
            && text.AsSpan(sentence[^1].End).TrimStart().StartsWith("?");
    }
}
