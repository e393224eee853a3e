using System.Collections.Frozen;

namespace Advice.Symptoms.Words;

/// <summary>Words that turn round what follows.</summary>
internal static class Negation
{
    /// <summary>Words before "zero" where it is a temperature or a reading: "below zero".</summary>
    private static readonly FrozenSet<string> BeforeNumber = WordSet.Of("below under sub above over minus at to from around near");

    /// <summary>Whether the word itself may be one.</summary>
    public static bool Is(Word word) => word.Term is "not" or "no";

    /// <summary>Whether one stands at that place.</summary>
    public static bool IsAt(IReadOnlyList<Word> words, int i) =>
        Is(words[i]) && !(words[i].Surface == "zero" && i > 0 && BeforeNumber.Contains(words[i - 1].Surface));

    /// <summary>Whether one stands before that place in its clause, nothing but small words between them.</summary>
    public static bool IsBefore(IReadOnlyList<Word> words, int i)
    {
        for (var j = i - 1; j >= 0 && words[j].Clause == words[i].Clause; j--)
        {
            if (words[j].Kind != WordKind.Filler)
                return IsAt(words, j);
        }

        return false;
    }
}
