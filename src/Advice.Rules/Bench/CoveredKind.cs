namespace Advice.Rules.Bench;

/// <summary>How much of one kind of entry the cases touch.</summary>
/// <param name="Kind">The kind, in the plural.</param>
/// <param name="Count">How many entries there are.</param>
/// <param name="Untouched">Ids of those that no case touches.</param>
public sealed record CoveredKind(string Kind, int Count, IReadOnlyList<string> Untouched)
{
    /// <summary>Share that the cases touch; 1 where there is nothing to touch.</summary>
    public double Share => Count == 0 ? 1 : 1 - ((double)Untouched.Count / Count);
}
