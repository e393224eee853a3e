using System.Collections.Frozen;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Denials;

/// <summary>Tells whether a text denies what a phrase in it says.</summary>
internal sealed class Denial(IReadOnlyList<Word> words, bool[] used)
{
    /// <summary>Words that may stand between "not" and what is denied: "I do not hear any loud squeal".</summary>
    private static readonly FrozenSet<string> Transparent = WordSet.Stems("""
        hear notice feel see smell observe experience find detect more other sign issue problem trouble symptom visible audible loud strange
        unusual abnormal excessive weird make such one single hint trace drop whiff out
        """);

    private static readonly FrozenSet<string> Possible = WordSet.Of("could may might");

    /// <summary>Words after "could" that tell what happened: "I could smell fuel", "it could hardly climb the hill", "it may be the pump".</summary>
    private static readonly FrozenSet<string> Real = WordSet.Of("""
        not hear smell see feel tell notice barely hardly only be been sometimes often
        """);

    private static readonly FrozenSet<string> Leading =
        WordSet.Stems("cause lead result end make let have");

    private static readonly FrozenSet<string> Past = WordSet.Of("ago last previously before year years warranty");

    private static readonly FrozenSet<string> None = WordSet.Of("no none nope never nothing negative");

    private readonly Ending ending = new(words);

    /// <summary>Whether it only might happen: "the wheel could come off", "which may lead to a fire".</summary>
    public bool IsFeared(PhraseMatch match)
    {
        for (var i = match.Last.Index; i >= 0 && words[i].Clause == match.Last.Clause; i--)
        {
            if (Possible.Contains(words[i].Surface))
                return !(i + 1 < words.Count && (Real.Contains(words[i + 1].Surface) || Real.Contains(words[i + 1].Term)));
            if (i < match.First.Index && words[i].Kind == WordKind.Content && !Leading.Contains(words[i].Term))
                return false;
        }

        return false;
    }

    /// <summary>Whether the clause says that it was put right some time ago, and the sentence not that it is back.</summary>
    public bool IsMended(PhraseMatch match, IReadOnlyList<Word> sentence) =>
        sentence.Any(w => (w.Clause == match.First.Clause || IsFirstOfNext(w, match)) && Ending.Repairing.Contains(w.Surface) && !NegatedBefore(w.Index))
        && sentence.Any(w => Past.Contains(w.Surface))
        && !sentence.Any(w => w.Surface is "back" or "again" or "still" or "returned" or "but");

    /// <summary>"A squeal last year, fixed under warranty": it goes on speaking of the same.</summary>
    private bool IsFirstOfNext(Word word, PhraseMatch match) =>
        word.Clause == match.Last.Clause + 1 && words.Skip(match.Last.Index + 1).FirstOrDefault(w => w.Clause == word.Clause && w.Kind == WordKind.Content) == word;

    /// <summary>Whether "not", "no" or "stopped" governs the phrase, before it or inside it.</summary>
    public bool Governs(PhraseMatch match)
    {
        // A phrase that holds its own negation agrees with another one in it: "won't charge anywhere, not at home".
        for (var i = match.First.Index + 1; i < match.Last.Index && (match.IsLearned || !match.Words.Any(Negation.Is)); i++)
        {
            if (!used[i] && IsNegator(i) && !IsManner(i) && !words.Skip(i).Take(match.Last.Index - i).Any(w => w.Surface == "and"))
                return true;
        }

        var retraction = new Retraction(words);
        if (IsDeniedBefore(match))
            return !retraction.IsOnlyUntil(match);
        return retraction.TakesBack(match) || IsSaidToBeFine(match) || IsAnsweredNo(match) || ending.Is(match) || IsSoughtInVain(match);
    }

    /// <summary>Whether the second phrase continues a list that began with the first: "no squeal, clunk or rattle".</summary>
    public bool Continues(PhraseMatch first, PhraseMatch second)
    {
        var or = false;
        for (var i = first.First.Index + 1; i < second.Last.Index; i++)
        {
            if (!first.Words.Contains(words[i]) && !second.Words.Contains(words[i]) && words[i].Kind == WordKind.Content && words[i].Term != "not")
                return false;
            or |= words[i].Surface is "or" or "nor";
        }

        for (var i = second.Last.Index + 1; !or && i < words.Count && words[i].Sentence == second.Last.Sentence; i++)
            or = words[i].Surface is "or" or "nor";
        return or;
    }

    private bool IsDeniedBefore(PhraseMatch match)
    {
        var listed = false;
        for (var i = match.First.Index - 1; i >= 0 && !used[i] && (words[i].Clause == match.First.Clause || (listed && words[i].Sentence == match.First.Sentence)); i--)
        {
            listed |= words[i].Surface is "any" or "or" or "nor";
            if (words[i].Surface == "used" && words[i + 1].Surface == "to")
                return !NegatedBefore(i);
            if (Excludes(i))
                return true;
            if (IsNegator(i))
                return i + 1 == words.Count || words[i + 1].Surface != "only";
            if (words[i].Surface == "once" && i > 0 && IsNegator(i - 1))
                return true;
            if ((RidsOf(i) || (Ending.Repairing.Contains(words[i].Surface) && !ending.Returns(match.Last.Index))) && !NegatedBefore(i))
                return !IsDoneByNobody(i);
            if (words[i].Surface is "stopped" or "quit" && Following.Content(words, i + 1, words[i].Clause) is var next and >= 0 && words[next].Surface.EndsWith("ing", StringComparison.Ordinal))
                return !NegatedBefore(i);
            if (words[i].Kind == WordKind.Content && !Transparent.Contains(words[i].Term))
                return false;
        }

        return false;
    }

    /// <summary>"Rather than", "instead of", "free of", "yet to": what follows is not so.</summary>
    private bool Excludes(int i) => words[i].Surface switch
    {
        "nothing" => !(i > 0 && words[i - 1].Surface is "to" or "into"),
        "instead" or "neither" => true,
        "none" => Following.Is(words, i, "of"),
        "than" => i > 0 && words[i - 1].Surface == "rather",
        "free" => Following.Is(words, i, "of") || Following.Is(words, i, "from"),
        "yet" => Following.Is(words, i, "to"),
        _ => false,
    };

    /// <summary>"Ruled out a misfire", "got rid of the squeal".</summary>
    private bool RidsOf(int i) => words[i].Surface == "rid" || (words[i].Term == "rul" && Following.Is(words, i, "out"));

    /// <summary>"Nobody fixed the squeal".</summary>
    private bool IsDoneByNobody(int verb)
    {
        for (var i = verb - 1; i >= 0 && words[i].Clause == words[verb].Clause; i--)
        {
            if (words[i].Surface is "nobody" or "none" or "neither")
                return true;
        }

        return false;
    }

    /// <summary>"Any squeal? None."</summary>
    private bool IsAnsweredNo(PhraseMatch match)
    {
        var next = match.Last.Index + 1;
        return next < words.Count && words[next].Clause != match.Last.Clause && None.Contains(words[next].Surface)
            && (next + 1 == words.Count || words[next + 1].Clause != words[next].Clause);
    }

    /// <summary>"The engine sounds fine".</summary>
    private bool IsSaidToBeFine(PhraseMatch match) => match.Last.Surface is "sounds" or "sound" or "sounding" or "looks" or "look" or "feels" or "works"
        && Following.Content(words, match.Last.Index + 1, match.Last.Clause) is var next and >= 0 && WellBeing.IsWordOf(words[next]);

    /// <summary>"Looked for leaks and found nothing".</summary>
    private bool IsSoughtInVain(PhraseMatch match) =>
        Enumerable.Range(match.Last.Index + 1, words.Count - match.Last.Index - 1).TakeWhile(i => words[i].Sentence == match.Last.Sentence)
            .Any(i => words[i].Surface is "found" or "find" && i + 1 < words.Count && words[i + 1].Surface is "nothing" or "none")
        && Enumerable.Range(0, match.First.Index).Reverse().TakeWhile(i => words[i].Sentence == match.First.Sentence)
            .Any(i => words[i].Surface is "checked" or "looked" or "searched" or "listened" or "inspected" or "check" or "look");

    /// <summary>"Without me touching it" tells how, not what is not.</summary>
    private bool IsManner(int i) => words[i].Surface == "without" && i + 1 < words.Count && words[i + 1].Surface is "me" or "us" or "him" or "her" or "anyone" or "anybody";

    private bool IsNegator(int i) => Negation.IsAt(words, i);

    private bool NegatedBefore(int i) => Negation.IsBefore(words, i);
}
