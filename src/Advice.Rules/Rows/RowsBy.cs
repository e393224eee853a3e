using System.Collections.Frozen;

namespace Advice.Rules.Rows;

/// <summary>Rows by what brings them into play; an empty list where nothing does.</summary>
internal sealed class RowsBy<TKey, TRow>(IEnumerable<(TKey Key, TRow Row)> rows)
    where TKey : notnull
{
    private readonly FrozenDictionary<TKey, TRow[]> _rows =
        rows.GroupBy(one => one.Key, one => one.Row).ToFrozenDictionary(group => group.Key, group => group.ToArray());

    /// <summary>The rows that it brings, in the order in which they were given.</summary>
    public TRow[] this[TKey key] => _rows.TryGetValue(key, out var found) ? found : [];
}
