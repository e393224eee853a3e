using Advice.Knowledge.Conditions;
using Advice.Vehicles;

namespace Advice.Knowledge.Limits;

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

    /// <summary>Time from new to the first one, years; null = as long as from one to the next.</summary>
    public double? FirstYears { get; init; }

    /// <summary>The law that asks for it; null = advice of the trade.</summary>
    public string? Jurisdiction { get; init; }

    /// <summary>The kinds of that use that it is for; none = all.</summary>
    public IReadOnlyList<string> Kinds { get; init; } = [];

    /// <summary>Whether the use of a vehicle calls for it: of that duty, and where more was said of it, of one of these kinds.</summary>
    public bool IsForUseOf(Vehicle vehicle) => Duty is null
        || (Duty == vehicle.Word(Vehicle.Duty) && (Kinds.Count == 0 || vehicle.SevereUse.Count == 0 || vehicle.SevereUse.Any(Kinds.Contains)));

    /// <summary>Whether the caller gives it.</summary>
    public bool IsGiven { get; private init; }
}
