namespace Advice.Documents.Dues;

/// <summary>How far past the point at which it is due; negative = still to go, null = cannot be told.</summary>
/// <param name="Days">By time, days.</param>
/// <param name="Km">By distance, km.</param>
public sealed record DueAmount(int? Days, double? Km);
