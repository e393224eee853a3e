namespace Advice.Documents;

/// <summary>A value with its unit, in an answer.</summary>
public sealed record Amount(double Value, string Unit);
