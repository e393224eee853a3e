using Advice.Rules.Checking;

namespace Advice.Rules.Cases;

/// <summary>Ids that a checked rule set knows.</summary>
internal sealed class KnownIds(string noun, IEnumerable<string> ids) : IIds
{
    private readonly SortedSet<string> _ids = new(ids, StringComparer.Ordinal);

    /// <inheritdoc/>
    public string Noun => noun;

    /// <inheritdoc/>
    public IEnumerable<string> All => _ids;

    /// <inheritdoc/>
    public bool Contains(string id) => _ids.Contains(id);
}
