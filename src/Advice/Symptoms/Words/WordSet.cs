using System.Collections.Frozen;

namespace Advice.Symptoms.Words;

/// <summary>Sets of words, written as a text.</summary>
internal static class WordSet
{
    /// <summary>The words of a text.</summary>
    /// <param name="text">Words apart by spaces or line breaks.</param>
    public static FrozenSet<string> Of(string text) => Split(text).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>The stems of the words of a text, so that every form of them counts.</summary>
    /// <param name="text">Words apart by spaces or line breaks.</param>
    public static FrozenSet<string> Stems(string text) => Split(text).Select(WordForms.Stem).ToFrozenSet(StringComparer.Ordinal);

    private static string[] Split(string text) => text.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries);
}
