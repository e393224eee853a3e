using Advice.Symptoms.Words;

namespace Advice.Symptoms.Phrases;

/// <summary>A phrase found in a text.</summary>
/// <param name="Meaning">Id of what it says.</param>
/// <param name="Words">Its words, in the order of the text.</param>
/// <param name="Confidence">How sure it is, 0 … 1.</param>
/// <param name="Weight">How much its words tell together: rare words tell more.</param>
internal sealed record PhraseMatch(string Meaning, IReadOnlyList<Word> Words, double Confidence, double Weight)
{
    /// <summary>Those of its words that stand for a class of words; the others name the part that they are said of.</summary>
    public IReadOnlyList<Word> Classed { get; init; } = [];

    /// <summary>Whether the phrase has words that the text lacks.</summary>
    public bool IsPartial { get; init; }

    /// <summary>Whether it is no phrase but what was learned says of these words.</summary>
    public bool IsLearned { get; init; }

    /// <summary>The words that no other phrase may use. A part may have several faults: "the wipers streak and rattle".</summary>
    public IReadOnlyList<Word> Taken => Classed.Count > 0 ? Classed : Words;

    /// <summary>Its first word.</summary>
    public Word First => Words[0];

    /// <summary>Its last word.</summary>
    public Word Last => Words[^1];

    /// <summary>Whether words of it stand in a clause.</summary>
    public bool IsIn(int clause) => Words.Any(word => word.Clause == clause);

    /// <summary>
    /// Whether another phrase has some of its words and the negation right before it, "no fuel pressure" says more than "fuel pressure", or one that it passes over.
    /// </summary>
    public bool LeavesOutNegation(PhraseMatch other) =>
        other.Words.Any(w => Negation.Is(w) && (w.Index == First.Index - 1 || (First.Index < w.Index && w.Index < Last.Index && !Words.Contains(w) && other.Meaning == Meaning)))
        && other.Words.Count(Words.Contains) > (other.Meaning == Meaning ? 0 : 1);

    /// <summary>Whether it is a part of a longer phrase: "brake hard" of "when I brake hard".</summary>
    public bool IsWithin(PhraseMatch longer) => longer.Words.Count > Words.Count && Words.All(longer.Words.Contains);

    /// <summary>Whether it lacks words and says little beyond a circumstance: "after driving through deep water" does not say that it stopped there.</summary>
    public bool IsMostly(PhraseMatch circumstance) => IsPartial && Words.Except(circumstance.Words).Count() < 2;
}
