namespace Advice.Rules.Bench;

/// <summary>How long one stage of the way of a request takes.</summary>
/// <param name="Stage">What is done.</param>
/// <param name="Microseconds">Median over the rounds of the mean over the cases.</param>
public sealed record StageTime(string Stage, double Microseconds);
