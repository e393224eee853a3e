namespace Advice.Knowledge;

/// <summary>Finds the word that someone probably meant.</summary>
public static class NearestWord
{
    private const int MostIds = 3;

    // Shorter beginnings are shared by chance.
    private const int ShortestStem = 3;

    /// <summary>The known word that is fewest slips away, ties by ordinal order; null where none is near enough to be meant.</summary>
    /// <param name="word">The word as written.</param>
    /// <param name="known">The right words.</param>
    public static string? To(string word, IEnumerable<string> known)
    {
        var nearest = MostSlips(word) + 1;
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

    /// <summary>Up to three known ids, best first: the more words they share with it and the fewer slips they are away.</summary>
    /// <param name="id">The id as written, words joined by hyphens.</param>
    /// <param name="known">The right ids.</param>
    public static IReadOnlyList<string> Ids(string id, IEnumerable<string> known)
    {
        var words = id.Split('-');
        return
        [
            .. known.Select(candidate => (Id: candidate, Slips: SlipsIfFew(id, candidate), Shared: Shared(words, candidate)))
                .Where(candidate => candidate.Slips is not null || candidate.Shared > 0)
                .OrderByDescending(candidate => candidate.Shared)
                .ThenBy(candidate => candidate.Slips ?? int.MaxValue)
                .ThenBy(candidate => candidate.Id.Length)
                .ThenBy(candidate => candidate.Id, StringComparer.Ordinal)
                .Take(MostIds)
                .Select(candidate => candidate.Id),
        ];
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

    // A third of the letters wrong is still recognisable; more offers nonsense.
    private static int MostSlips(string word) => Math.Max(1, word.Length / 3);

    private static int? SlipsIfFew(string word, string candidate) =>
        Math.Abs(candidate.Length - word.Length) <= MostSlips(word) && Slips(word, candidate) is var slips && slips <= MostSlips(word) ? slips : null;

    private static int Shared(string[] words, string candidate) =>
        candidate.Split('-').Count(part => part.Length >= ShortestStem && words.Any(word => HaveOneStem(word, part)));

    private static bool HaveOneStem(string a, string b) =>
        a.Length >= ShortestStem && (a.StartsWith(b, StringComparison.OrdinalIgnoreCase) || b.StartsWith(a, StringComparison.OrdinalIgnoreCase));

    private static bool Same(char a, char b) => char.ToLowerInvariant(a) == char.ToLowerInvariant(b);
}
