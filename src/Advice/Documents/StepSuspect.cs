namespace Advice.Documents;

/// <summary>A fault that a step looks for.</summary>
public sealed record StepSuspect(string Fault, string Name, double Probability);
