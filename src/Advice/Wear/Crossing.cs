namespace Advice.Wear;

/// <summary>Where and when a limit is reached.</summary>
/// <param name="Km">Distance driven.</param>
/// <param name="On">The day at the rate of driving so far; null = beyond what a calendar is good for.</param>
public sealed record Crossing(double Km, DateOnly? On);
