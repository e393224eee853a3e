using Advice.Knowledge;

namespace Advice.Suspects;

/// <summary>A system that may have a fault.</summary>
/// <param name="System">The system.</param>
/// <param name="Probability">Probability that any of its suspected faults is there.</param>
/// <param name="Named">How much the complaint speaks of it.</param>
public sealed record SuspectedSystem(VehicleSystem System, double Probability, double Named);
