namespace Advice.Rules.Bench.Drivers;

/// <summary>A driver whose vehicle has one fault, drawn from the rules.</summary>
/// <param name="Case">The vehicle and what the driver reports first.</param>
/// <param name="Fault">Id of the fault, which nobody knows.</param>
/// <param name="Noticed">Ids of all symptoms that the driver would notice if asked.</param>
/// <param name="Unsure">Ids of the symptoms of which the driver could not say.</param>
public sealed record Driver(Case Case, string Fault, IReadOnlySet<string> Noticed, IReadOnlySet<string> Unsure);
