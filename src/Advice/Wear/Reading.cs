namespace Advice.Wear;

/// <summary>A part measured on a day.</summary>
/// <param name="Km">Distance that the vehicle had driven.</param>
/// <param name="On">The day.</param>
/// <param name="Value">What was measured.</param>
public sealed record Reading(double Km, DateOnly On, double Value);
