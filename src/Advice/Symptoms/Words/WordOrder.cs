using System.Collections.Frozen;

namespace Advice.Symptoms.Words;

/// <summary>Tells whether words that a phrase has stand in a sentence so that they say something else.</summary>
internal static class WordOrder
{
    private static readonly FrozenSet<string> Losing = WordSet.Stems("lose drop lack");

    /// <summary>"Squeals when I brake" does not say that the brakes squeal, nor "vibration and no noise" that there is a vibrating noise.</summary>
    public static bool Leaps(IReadOnlyList<Word> sentence, int[] places)
    {
        for (var i = places[0]; i < places[^1]; i++)
        {
            if (sentence[i].Term is "when" or "after" or "before" or "until" or "no" && !places.Contains(i))
                return true;
        }

        return false;
    }

    /// <summary>"Hasn't lost any power" says that it has it, and "the wheels and saw" is no sawing at the wheel.</summary>
    public static bool IsTurnedRound(IReadOnlyList<Word> sentence, int[] places, bool inverted) =>
        (inverted && places.Length == 2 && sentence[places[1]].Link is "and" or "or")
        || Enumerable.Range(1, places.Length - 1).Any(i => Negation.Is(sentence[places[i - 1]]) && places[i] - places[i - 1] == 2 && IsLosing(sentence[places[i] - 1]));

    /// <summary>"The pedal is hard", "a thump from the tyres", "fills slowly".</summary>
    public static bool IsSaidOfFirst(Word second) => second.IsPredicate || second.Link is "of" or "from" || second.Surface.EndsWith("ly", StringComparison.Ordinal);

    private static bool IsLosing(Word word) => Losing.Contains(word.Term) || word.Is("<trouble>");

    /// <summary>"Didn't misfire, passed its test" does not say that it did not pass: a negation belongs to its own clause.</summary>
    public static bool IsTornFromNegation(IReadOnlyList<Word> words) =>
        Enumerable.Range(1, words.Count - 1).Any(i => Negation.Is(words[i - 1]) && words[i - 1].Clause != words[i].Clause);
}
