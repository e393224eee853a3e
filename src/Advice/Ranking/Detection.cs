namespace Advice.Ranking;

/// <summary>How surely a check finds a cause that is present.</summary>
/// <param name="Cause">Index of the cause in the weights, from 0.</param>
/// <param name="Surely">Probability that the check finds it, 0 … 1.</param>
public readonly record struct Detection(int Cause, double Surely);
