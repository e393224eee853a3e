using Advice.Symptoms.Words;

namespace Advice.Symptoms.Resemblances;

/// <summary>What a sentence or a phrase says, as terms with weights: its words, what these may stand for, and their classes.</summary>
internal static class SentenceTerms
{
    /// <summary>Weight of the class of a word beside the word itself: a rattle is a little like every noise.</summary>
    private const double OfClass = 0.5;

    /// <summary>Weight of what a word may stand for.</summary>
    private const double OfSynonym = 0.4;

    /// <summary>Weight of two words that follow each other.</summary>
    private const double OfPair = 0.7;

    /// <summary>The terms of single words.</summary>
    public static Dictionary<string, double> Of(IReadOnlyList<Word> words)
    {
        var terms = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var word in words)
        {
            terms[word.Term] = 1;
            foreach (var one in word.Classes)
                terms.TryAdd(one, OfClass);
            foreach (var one in word.Synonyms)
                terms.TryAdd(one, OfSynonym);
        }

        return terms;
    }

    /// <summary>These terms and those of each two words that follow each other.</summary>
    public static Dictionary<string, double> WithPairs(IReadOnlyList<Word> words)
    {
        var terms = Of(words);
        for (var i = 1; i < words.Count; i++)
            terms[$"{words[i - 1].Term} {words[i].Term}"] = OfPair;
        return terms;
    }
}
