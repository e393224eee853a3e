namespace Advice.Knowledge;

/// <summary>How often a service item is due: whichever of the two comes first.</summary>
public sealed record Interval(double? Km, double? Years, string? Duty, VehicleCondition When, Source Source);
