using Advice.Symptoms.Words;

namespace Advice.Symptoms;

/// <summary>What stands after a place in a text.</summary>
internal static class Following
{
    /// <summary>Place of the next word that counts in the clause; -1 where there is none.</summary>
    public static int Content(IReadOnlyList<Word> words, int from, int clause)
    {
        for (var i = from; i < words.Count && words[i].Clause == clause; i++)
        {
            if (words[i].Kind == WordKind.Content)
                return i;
        }

        return -1;
    }

    /// <summary>Whether the next word is that one.</summary>
    public static bool Is(IReadOnlyList<Word> words, int i, string word) => i + 1 < words.Count && words[i + 1].Surface == word;
}
