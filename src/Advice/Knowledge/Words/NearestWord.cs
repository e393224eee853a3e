namespace Advice.Knowledge.Words;

/// <summary>Finds the word that someone probably meant.</summary>
public static class NearestWord
{
    private const int MostIds = 3;

    // Shorter beginnings are shared by chance.
    private const int ShortestStem = 3;

    /// <summary>The known word that is fewest slips away, ties by ordinal order; null where none is near enough to be meant.</summary>
    /// <param name="word">The word as written.</param>
    /// <param name="known">The right words.</param>
    public static string? To(string word, IEnumerable<string> known) => known
        .Select(candidate => (Word: candidate, Slips: SlipsIfFew(word, candidate)))
        .Where(candidate => candidate.Slips is not null)
        .OrderBy(candidate => candidate.Slips)
        .ThenBy(candidate => candidate.Word, StringComparer.Ordinal)
        .FirstOrDefault().Word;

    /// <summary>Up to three known ids, best first: the more words they share with it and the fewer slips they are away.</summary>
    /// <param name="id">The id as written, words joined by hyphens.</param>
    /// <param name="known">The right ids.</param>
    public static IReadOnlyList<string> Ids(string id, IEnumerable<string> known)
    {
        var words = id.Split('-').Where(word => word.Length >= ShortestStem).Distinct().ToArray();
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
        var (left, right) = (a.ToLowerInvariant(), b.ToLowerInvariant());
        var (before, last, row) = (new int[right.Length + 1], new int[right.Length + 1], new int[right.Length + 1]);
        for (var j = 0; j <= right.Length; j++)
            last[j] = j;
        for (var i = 1; i <= left.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var change = left[i - 1] == right[j - 1] ? 0 : 1;
                row[j] = Math.Min(Math.Min(row[j - 1], last[j]) + 1, last[j - 1] + change);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
            }

            (before, last, row) = (last, row, before);
        }

        return last[right.Length];
    }

    // A third of the letters wrong is still recognisable; more offers nonsense.
    private static int? SlipsIfFew(string word, string candidate)
    {
        var few = Math.Max(1, word.Length / 3);
        return Math.Abs(word.Length - candidate.Length) <= few && LeastSlips(word, candidate) <= few && Slips(word, candidate) is var slips && slips <= few ? slips : null;
    }

    /// <summary>A bound that costs little, for the callers of a service may write many wrong words: letters that one word has and the other lacks.</summary>
    private static int LeastSlips(string a, string b)
    {
        const int kinds = 64;
        Span<int> surplus = stackalloc int[kinds];
        surplus.Clear();
        foreach (var letter in a)
            surplus[char.ToLowerInvariant(letter) % kinds]++;
        foreach (var letter in b)
            surplus[char.ToLowerInvariant(letter) % kinds]--;
        var (more, fewer) = (0, 0);
        foreach (var count in surplus)
        {
            more += Math.Max(count, 0);
            fewer += Math.Max(-count, 0);
        }

        return Math.Max(more, fewer);
    }

    private static int Shared(string[] words, string candidate)
    {
        var shared = 0;
        foreach (var part in candidate.AsSpan().Split('-'))
        {
            if (IsOneOf(words, candidate.AsSpan(part)))
                shared++;
        }

        return shared;
    }

    private static bool IsOneOf(string[] words, ReadOnlySpan<char> part)
    {
        if (part.Length < ShortestStem)
            return false;
        foreach (var word in words)
        {
            if (part.StartsWith(word, StringComparison.OrdinalIgnoreCase) || word.AsSpan().StartsWith(part, StringComparison.OrdinalIgnoreCase))
                return true;
        }

        return false;
    }
}
