namespace Advice.Knowledge.Checks;

/// <summary>That a check finds a fault.</summary>
/// <param name="Fault">Id of the fault.</param>
/// <param name="Surely">Share of vehicles with the fault in which the check shows it, (0, 1].</param>
/// <param name="Value">The abnormal value that shows it; null = any.</param>
public sealed record Detects(string Fault, double Surely, string? Value);
