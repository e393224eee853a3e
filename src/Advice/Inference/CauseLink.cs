namespace Advice.Inference;

/// <summary>A cause that can produce a manifestation.</summary>
/// <param name="Cause">Index of the cause in the network's priors, from 0.</param>
/// <param name="Strength">q, the probability that the cause, when present, produces the manifestation by itself, 0 … 1.</param>
public readonly record struct CauseLink(int Cause, double Strength);
