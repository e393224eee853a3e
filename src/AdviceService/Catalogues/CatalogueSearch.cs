using System.Text.RegularExpressions;

namespace AdviceService.Catalogues;

/// <summary>Finds entries by words: the more of them it has in its id, names and phrases, and the rarer these are, the better.</summary>
internal sealed partial class CatalogueSearch
{
    private const int Usual = 10;
    private const int ShortestStem = 4;
    private const int LongestEnding = 3;

    private readonly List<(FoundEntry Entry, HashSet<string> Stems)> _entries;
    private readonly Dictionary<string, int> _entriesWith;

    /// <summary>A search over all entries.</summary>
    public CatalogueSearch(Entries entries)
    {
        _entries =
        [
            .. entries.Systems.Select(one => Entry("systems", one.Id, one.Name, one.Plain, [])),
            .. entries.Symptoms.Select(one => Entry("symptoms", one.Id, one.Name, one.Plain, one.Phrases)),
            .. entries.Faults.Select(one => Entry("faults", one.Id, one.Name, one.Plain, [])),
            .. entries.Checks.Select(one => Entry("checks", one.Id, one.Title, one.Plain, [])),
            .. entries.Cautions.Select(one => Entry("cautions", one.Id, one.Text, one.Plain, [])),
        ];
        _entriesWith = _entries.SelectMany(one => one.Stems).CountBy(stem => stem).ToDictionary(StringComparer.Ordinal);
    }

    /// <summary>The kinds of entry.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["systems", "symptoms", "faults", "checks", "cautions"];

    /// <summary>The entries found.</summary>
    public CatalogueSearchResult Find(CatalogueQuery query)
    {
        var wanted = Stems(query.Words).ToList();
        return new CatalogueSearchResult(
        [
            .. _entries.Where(one => query.Kind is null || one.Entry.Kind == query.Kind)
                .Select(one => (one.Entry, Weight: Math.Round(wanted.Where(one.Stems.Contains).Sum(Rarity), 9)))
                .Where(one => one.Weight > 0)
                .OrderByDescending(one => one.Weight).ThenBy(one => one.Entry.Id.Length).ThenBy(one => one.Entry.Id, StringComparer.Ordinal)
                .ThenBy(one => one.Entry.Kind, StringComparer.Ordinal)
                .Take(query.Limit ?? Usual).Select(one => one.Entry),
        ]);
    }

    private double Rarity(string stem) => Math.Log(1 + ((double)_entries.Count / _entriesWith[stem]));

    private static (FoundEntry, HashSet<string>) Entry(string kind, string id, string name, string plain, IEnumerable<string> phrases) =>
        (new FoundEntry(kind, id, name, plain), [.. Stems(string.Join(' ', [id, name, plain, .. phrases]))]);

    /// <summary>Words cut to their first letters: endings and most inflections do not tell entries apart.</summary>
    private static IEnumerable<string> Stems(string text) => Word().Matches(text.ToLowerInvariant())
        .Select(word => word.Value[..Math.Min(word.Length, Math.Max(ShortestStem, word.Length - LongestEnding))]).Distinct();

    [GeneratedRegex("[a-z0-9]{2,}", RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
