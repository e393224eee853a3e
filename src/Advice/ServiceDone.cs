namespace Advice;

/// <summary>A service that was done.</summary>
/// <param name="On">The day, if known.</param>
/// <param name="OdometerKm">The distance then, km, if known.</param>
public sealed record ServiceDone(DateOnly? On, double? OdometerKm);
