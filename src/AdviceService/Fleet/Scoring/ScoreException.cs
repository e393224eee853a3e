namespace AdviceService.Fleet.Scoring;

/// <summary>A score run cannot start or go on; the message says why and what would be right.</summary>
internal sealed class ScoreException(string message) : Exception(message);
