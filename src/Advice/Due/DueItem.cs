using Advice.Documents.Dues;
using Advice.Knowledge.Limits;

namespace Advice.Due;

/// <summary>How a service item stands on this vehicle.</summary>
/// <param name="Item">The item.</param>
/// <param name="Interval">The interval that decides.</param>
/// <param name="Status">How it stands.</param>
/// <param name="Recorded">Whether the last one was reported; else it counts from new.</param>
/// <param name="On">Day on which it is due by time, if that can be told.</param>
/// <param name="OdometerKm">Distance at which it is due, km, if that can be told.</param>
/// <param name="DaysPast">Days past that day; negative = still to go.</param>
/// <param name="KmPast">Distance past it, km; negative = still to go.</param>
/// <param name="OnlyIf">What must be true of the vehicle to have the item, where that is not known.</param>
public sealed record DueItem(
    ServiceItem Item, Interval Interval, DueStatus Status, bool Recorded, DateOnly? On, double? OdometerKm, int? DaysPast, double? KmPast, string? OnlyIf = null)
{
    /// <summary>Whether it is past its first interval from new and nobody reported it: it may have been done all the same. Never so
    /// where being late destroys the engine or worse.</summary>
    public bool MayBeDone { get; init; }

    /// <summary>What of its use calls for that interval, as far as it was said.</summary>
    public IReadOnlyList<VehicleUse> Uses { get; init; } = [];
}
