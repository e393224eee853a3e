using System.Collections.Frozen;

namespace Advice.Symptoms.Words;

/// <summary>Takes a word that is not known for a known one that differs by one letter too many, too few, wrong or swapped.</summary>
internal sealed class Spelling
{
    private const int Shortest = 5;
    private const int Longest = 20;
    private readonly FrozenSet<string> known;
    private readonly FrozenSet<string> stems;
    private readonly Lazy<ILookup<int, string>> byLetterAndLength;

    /// <summary>Knows these words.</summary>
    public Spelling(IEnumerable<string> words)
    {
        known = words.ToFrozenSet(StringComparer.Ordinal);
        stems = known.Select(WordForms.Stem).ToFrozenSet(StringComparer.Ordinal);
        // Whoever reads nothing but known words, such as those of phrases, need not know how they might be misspelt.
        byLetterAndLength = new(() => known.Union(stems.Where(s => s.Length > Shortest)).Where(IsCorrectable).ToLookup(word => Key(word, word.Length)));
    }

    /// <summary>Whether a word or another form of it is known.</summary>
    public bool Knows(string word) => known.Contains(word) || stems.Contains(WordForms.Stem(word));

    /// <summary>The known word or stem that is meant, or null if the word is known itself or resembles none.</summary>
    public string? Correct(string word)
    {
        if (!IsCorrectable(word) || Knows(word) || OrdinaryWords.Contains(word))
            return null;
        var stem = WordForms.Stem(word);
        return Nearest(word) ?? (IsCorrectable(stem) ? Nearest(stem) : null);
    }

    /// <summary>The first letter is nearly never wrong. A wrong vowel or one letter for two is the commoner slip: "stearing" is steering and not steaming.</summary>
    private string? Nearest(string word) => Enumerable.Range(word.Length - 1, 3)
        .SelectMany(length => byLetterAndLength.Value[Key(word, length)]).Where(known => IsOneSlip(known, word))
        .OrderBy(known => Skeleton(known) == Skeleton(word) ? 0 : 1).ThenBy(known => known, StringComparer.Ordinal).FirstOrDefault();

    private static int Key(string word, int length) => (word[0] * (Longest + 2)) + length;

    /// <summary>The consonants of a word, what is doubled once.</summary>
    private static string Skeleton(string word) =>
        string.Concat(word.Where((c, i) => !"aeiou".Contains(c, StringComparison.Ordinal) && (i == 0 || word[i - 1] != c)));

    private static bool IsCorrectable(string word) =>
        word.Length is >= Shortest and <= Longest && !word.AsSpan().ContainsAnyInRange('0', '9');

    private static bool IsOneSlip(string a, string b)
    {
        var start = 0;
        while (start < a.Length && start < b.Length && a[start] == b[start])
            start++;
        int endA = a.Length, endB = b.Length;
        while (endA > start && endB > start && a[endA - 1] == b[endB - 1])
        {
            endA--;
            endB--;
        }

        int restA = endA - start, restB = endB - start;
        return (restA <= 1 && restB <= 1)
            || (restA == 2 && restB == 2 && a[start] == b[start + 1] && a[start + 1] == b[start]);
    }
}
