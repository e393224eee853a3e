using System.Collections.Immutable;
using Advice.Evidence;
using Advice.Knowledge;

namespace Advice.Suspects;

/// <summary>A fault at the places between which the case does not distinguish.</summary>
/// <param name="Fault">The fault.</param>
/// <param name="Place">Position that names exactly those places; null = the case does not tell.</param>
/// <param name="Places">The places; empty for a fault without places.</param>
/// <param name="Prior">Probability on this vehicle before signs.</param>
/// <param name="OnlyIf">What must be true of the vehicle for the fault to exist, where that is not known.</param>
/// <param name="Links">Links to the signs of the case that fit its places.</param>
public sealed record FaultInstance(
    Fault Fault, string? Place, IReadOnlyList<string> Places, double Prior, string? OnlyIf, ImmutableArray<Link> Links);
