namespace Advice.Rules.Rows;

/// <summary>Rows by what brings them into play; an empty list where nothing does.</summary>
internal sealed class RowsBy<TKey, TRow>
    where TKey : notnull
{
    private readonly Dictionary<TKey, TRow[]> _rows = [];

    /// <summary>These rows.</summary>
    /// <remarks>Filled without groups of pairs: their code would have to be compiled at each start.</remarks>
    public RowsBy(IEnumerable<(TKey Key, TRow Row)> rows)
    {
        var lists = new Dictionary<TKey, List<TRow>>();
        foreach (var (key, row) in rows)
        {
            if (!lists.TryGetValue(key, out var list))
                lists.Add(key, list = []);
            list.Add(row);
        }

        foreach (var (key, list) in lists)
            _rows.Add(key, [.. list]);
    }

    /// <summary>The rows that it brings, in the order in which they were given.</summary>
    public TRow[] this[TKey key] => _rows.TryGetValue(key, out var found) ? found : [];
}
