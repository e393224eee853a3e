namespace Advice.Ranking;

/// <summary>A check that could be done.</summary>
/// <param name="Id">Its id; ties are broken by it.</param>
/// <param name="Minutes">Time that it takes, min, above 0.</param>
/// <param name="Detections">What it finds; of several detections of one cause the surest counts.</param>
public sealed record CheckOption(string Id, double Minutes, IReadOnlyList<Detection> Detections);
