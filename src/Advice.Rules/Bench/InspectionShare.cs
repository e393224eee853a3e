namespace Advice.Rules.Bench;

/// <summary>How much of the harm that the whole inspection of a vehicle would find is found within some minutes.</summary>
/// <param name="Minutes">The time, min.</param>
/// <param name="Chosen">Share that the chosen steps find.</param>
/// <param name="Sheet">Share that all steps in order of work find, stopped when the time is up.</param>
public sealed record InspectionShare(int Minutes, double Chosen, double Sheet);
