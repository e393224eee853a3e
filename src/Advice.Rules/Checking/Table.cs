using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;
using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>The entries of one kind: which ids there are, and what they were bound to. Ids are declared before anything is bound,
/// so that entries may name each other in any order and a faulty entry does not make every mention of it an error.</summary>
/// <param name="noun">What an entry is called in messages.</param>
internal sealed class Table<T>(string noun) : IDeclaredIds
    where T : class
{
    private readonly Dictionary<string, Place> places = new(StringComparer.Ordinal);
    private readonly Dictionary<string, T> bound = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public string Noun => noun;

    /// <inheritdoc/>
    public IEnumerable<string> All => places.Keys;

    /// <summary>The bound entries in the order of the files.</summary>
    public IReadOnlyCollection<T> Bound => bound.Values;

    /// <inheritdoc/>
    public bool Contains(string id) => places.ContainsKey(id);

    /// <inheritdoc/>
    public bool Declare(string id, Place place, out Place first)
    {
        first = places.GetValueOrDefault(id, place);
        return places.TryAdd(id, place);
    }

    /// <inheritdoc/>
    public Place PlaceOf(string id) => places[id];

    /// <summary>Keeps a bound entry.</summary>
    public void Bind(string id, T? entry)
    {
        if (entry is not null)
            bound.TryAdd(id, entry);
    }

    /// <summary>The entry with that id, if it could be bound.</summary>
    public bool TryGet(string? id, [NotNullWhen(true)] out T? entry) => bound.TryGetValue(id ?? "", out entry);

    /// <summary>All bound entries by id.</summary>
    public FrozenDictionary<string, T> Freeze() => bound.ToFrozenDictionary(StringComparer.Ordinal);
}
