namespace AdviceService.Fleet.Scoring;

/// <summary>How far a run has come.</summary>
/// <param name="Lines">Lines answered.</param>
/// <param name="Bytes">Bytes of the input that were read; null where it is a pipe.</param>
internal readonly record struct ScoreProgress(long Lines, long? Bytes);
