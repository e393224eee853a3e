using System.Collections.Frozen;

namespace Advice.Symptoms;

/// <summary>Correct English words that differ by one letter from words of the vocabulary: they are no misspellings of those.</summary>
internal static class OrdinaryWords
{
    private static readonly FrozenSet<string> Words = """
        stared stars spend speech spent spare space crash clash cream cruel
        """.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether it is one of them.</summary>
    public static bool Contains(string word) => Words.Contains(word);
}
