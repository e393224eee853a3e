namespace AdviceService.Fleet;

/// <summary>The last line of a batch.</summary>
/// <param name="End">What was done.</param>
public sealed record EndLine(BatchCount End);
