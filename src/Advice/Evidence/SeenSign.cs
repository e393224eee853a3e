using Advice.Knowledge;

namespace Advice.Evidence;

/// <summary>A sign of the case: what was seen, when and where, or expressly not seen.</summary>
/// <param name="Sign">The sign.</param>
/// <param name="Occasions">Occasions that were stated.</param>
/// <param name="Position">Position that was stated.</param>
/// <param name="Present">Whether it is there; false = expressly not.</param>
public sealed record SeenSign(Sign Sign, IReadOnlyList<string> Occasions, string? Position, bool Present)
{
    /// <summary>Unique text form, for ordering.</summary>
    public override string ToString() => $"{Sign}@{string.Join('+', Occasions)}@{Position}@{(Present ? "yes" : "no")}";
}
