using Advice.Knowledge.Signs;

namespace Advice.Evidence;

/// <summary>A sign of the case: what was seen, when and where, or expressly not seen. Equal by content.</summary>
/// <param name="Sign">The sign.</param>
/// <param name="Occasions">Occasions that were stated.</param>
/// <param name="Position">Position that was stated.</param>
/// <param name="Present">Whether it is there; false = expressly not.</param>
public sealed record SeenSign(Sign Sign, IReadOnlyList<string> Occasions, string? Position, bool Present)
{
    private readonly string _key = $"{Sign}@{string.Join('+', Occasions)}@{Position}@{(Present ? "yes" : "no")}";
    private int _hash;

    /// <inheritdoc/>
    public bool Equals(SeenSign? other) => ReferenceEquals(this, other) || (other is not null && _key == other._key);

    /// <inheritdoc/>
    public override int GetHashCode() => _hash != 0 ? _hash : _hash = _key.GetHashCode(StringComparison.Ordinal);

    /// <summary>Unique text form, for ordering.</summary>
    public override string ToString() => _key;
}
