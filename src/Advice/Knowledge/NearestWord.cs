namespace Advice.Knowledge;

/// <summary>Finds the word that someone probably meant.</summary>
public static class NearestWord
{
    /// <summary>The known word that is fewest slips away, ties by ordinal order; null where none is near enough to be meant.</summary>
    /// <param name="word">The word as written.</param>
    /// <param name="known">The right words.</param>
    public static string? To(string word, IEnumerable<string> known)
    {
        // A third of the letters wrong is still recognisable; more offers nonsense.
        var nearest = Math.Max(1, word.Length / 3) + 1;
        string? found = null;
        foreach (var candidate in known)
        {
            if (Math.Abs(candidate.Length - word.Length) > nearest)
                continue;
            var slips = Slips(word, candidate);
            if (slips < nearest || (slips == nearest && found is not null && string.CompareOrdinal(candidate, found) < 0))
                (nearest, found) = (slips, candidate);
        }

        return found;
    }

    /// <summary>Letters to insert, drop, change or swap with their neighbour (optimal string alignment distance), ignoring case.</summary>
    public static int Slips(string a, string b)
    {
        var (before, last, row) = (new int[b.Length + 1], new int[b.Length + 1], new int[b.Length + 1]);
        for (var j = 0; j <= b.Length; j++)
            last[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = Same(a[i - 1], b[j - 1]) ? 0 : 1;
                row[j] = Math.Min(Math.Min(row[j - 1], last[j]) + 1, last[j - 1] + change);
                if (i > 1 && j > 1 && Same(a[i - 1], b[j - 2]) && Same(a[i - 2], b[j - 1]))
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
            }

            (before, last, row) = (last, row, before);
        }

        return last[b.Length];
    }

    private static bool Same(char a, char b) => char.ToLowerInvariant(a) == char.ToLowerInvariant(b);
}
