namespace Advice.Knowledge;

/// <summary>How often a service item is due: whichever of the two comes first.</summary>
/// <param name="Km">Distance, km.</param>
/// <param name="Years">Time, years.</param>
/// <param name="Duty">The use that it is for; null = any.</param>
/// <param name="When">Vehicles that it is for.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Interval(double? Km, double? Years, string? Duty, VehicleCondition When, Source Source)
{
    /// <summary>An interval that the caller gives.</summary>
    public static Interval Given(double? km, double? years) =>
        new(km, years, null, VehicleCondition.Always, new Source(Grade.Primary, "given with the request", null, null)) { IsGiven = true };

    /// <summary>Whether the caller gives it.</summary>
    public bool IsGiven { get; private init; }
}
