using System.Collections.Immutable;
using Advice.Evidence;

namespace Advice.Suspects;

/// <summary>Places of a fault between which the signs of the case do not distinguish.</summary>
/// <param name="Name">Position that names exactly those places and is narrower than the fault's own; else null.</param>
/// <param name="Places">The places.</param>
/// <param name="Share">Their share of the fault's base rate.</param>
/// <param name="Links">Links whose sign fits them.</param>
public sealed record PlaceBlock(string? Name, IReadOnlyList<string> Places, double Share, ImmutableArray<Link> Links);
