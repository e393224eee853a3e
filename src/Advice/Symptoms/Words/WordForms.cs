using System.Buffers;

namespace Advice.Symptoms.Words;

/// <summary>Takes regular English endings off, so that the forms of a word become equal. The result need not be a word.</summary>
internal static class WordForms
{
    private const int ShortestStem = 3;
    private static readonly SearchValues<char> Vowels = SearchValues.Create("aeiouy");

    /// <summary>The common part of all forms of the word.</summary>
    /// <param name="word">Lower case, without apostrophes. "Hardly" is no form of "hard".</param>
    public static string Stem(string word)
    {
        if (word.Length <= ShortestStem || !char.IsLetter(word[^1]) || word == "hardly")
            return word;
        var stem = WithoutVerbEnding(WithoutPlural(word));
        if (stem.Length > 5 && stem.EndsWith("ly", StringComparison.Ordinal))
            stem = stem[..^2];
        if (stem.Length > 6 && stem.EndsWith("ation", StringComparison.Ordinal))
            stem = stem[..^3];
        return stem.Length > ShortestStem && stem[^1] == 'e' ? stem[..^1] : stem;
    }

    private static string WithoutPlural(string word)
    {
        if (word[^1] != 's')
            return word;
        if (word.EndsWith("ies", StringComparison.Ordinal))
            return word.Length > 4 ? word[..^3] + "y" : word[..^1];
        if (EndsWithAny(word, "sses", "shes", "ches", "xes", "zes", "ses"))
            return word[..^2];
        return word[^2] is 's' or 'u' or 'i' ? word : word[..^1];
    }

    private static string WithoutVerbEnding(string word)
    {
        if (word.Length > 4 && word.EndsWith("ied", StringComparison.Ordinal))
            return word[..^3] + "y";
        var cut = word.EndsWith("ing", StringComparison.Ordinal) ? 3
            : word.EndsWith("ed", StringComparison.Ordinal) && word[^3] != 'e' ? 2 : 0;
        if (cut == 0 || word.Length - cut < ShortestStem || !word.AsSpan(0, word.Length - cut).ContainsAny(Vowels))
            return word;
        var stem = word[..^cut];
        var doubled = stem[^1] == stem[^2] && !"lszfaeiou".Contains(stem[^1], StringComparison.Ordinal);
        return doubled ? stem[..^1] : stem;
    }

    private static bool EndsWithAny(string word, params ReadOnlySpan<string> endings)
    {
        foreach (var ending in endings)
        {
            if (word.EndsWith(ending, StringComparison.Ordinal))
                return true;
        }

        return false;
    }
}
