namespace Advice.Documents.Requests;

/// <summary>A case, and a fault or a check of which a caller wants to know why it did not come up.</summary>
/// <param name="Case">The case.</param>
/// <param name="Fault">Id of the fault; null where a check is asked for.</param>
/// <param name="Check">Id of the check; null where a fault is asked for.</param>
public sealed record WhyNotRequest(AdviceRequest Case, string? Fault, string? Check);
