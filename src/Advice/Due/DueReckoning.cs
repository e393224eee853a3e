using Advice.Documents;
using Advice.Knowledge;
using Advice.Vehicles;

namespace Advice.Due;

/// <summary>What is due by distance and time, whichever comes first.</summary>
public sealed class DueReckoning(Catalogue catalogue)
{
    private const double LikelyShare = 0.5;
    private const double Soon = 0.9;
    private const double Overdue = 1.1;

    /// <summary>Every item that this vehicle has, the most pressing first, then by id.</summary>
    public IReadOnlyList<DueItem> Of(Case @case) =>
    [
        .. catalogue.Services.Values
            .Where(item => VehicleFit.Share(catalogue.FitsByService[item.Id], @case.Vehicle) > 0)
            .Select(item => Reckon(item, @case)).OfType<DueItem>()
            .OrderBy(item => item.Status).ThenBy(item => item.Item.Id, StringComparer.Ordinal),
    ];

    private DueItem? Reckon(ServiceItem item, Case @case)
    {
        var done = @case.Services.GetValueOrDefault(item.Id);
        if ((done?.MakersInterval ?? Ours(item, @case.Vehicle)) is not { } interval)
            return null;
        var recorded = done?.IsDated == true;
        var (from, fromKm) = recorded ? (done!.On, done.OdometerKm) : (New(@case), 0);
        DateOnly? on = from is { } day && interval.Years is { } years ? day.AddDays((int)Math.Round(years * MeanYear.Days)) : null;
        double? atKm = fromKm + interval.Km;
        var now = @case.Vehicle.Number(Vehicle.OdometerKm);
        var daysPast = on is { } dueOn ? @case.AsOf.DayNumber - dueOn.DayNumber : (int?)null;
        var kmPast = now - atKm;
        var used = Math.Max(
            daysPast is { } days ? 1 + (days / (interval.Years!.Value * MeanYear.Days)) : double.NegativeInfinity,
            kmPast is { } km ? 1 + (km / interval.Km!.Value) : double.NegativeInfinity);
        var fits = catalogue.FitsByService[item.Id];
        var neverLate = item.NeverLate?.IsLikely(@case.Vehicle) == true && VehicleFit.Share(fits, @case.Vehicle) >= LikelyShare;
        return new DueItem(item, interval, Status(used, neverLate), recorded, on, atKm, daysPast, kmPast, VehicleFit.OnlyIf(fits, @case.Vehicle))
        {
            MayBeDone = !recorded && used >= 1 && !neverLate,
        };
    }

    private static Interval? Ours(ServiceItem item, Vehicle vehicle) => item.Intervals
        .Where(one => (one.Duty is null || one.Duty == vehicle.Word("duty")) && one.When.IsLikely(vehicle))
        .OrderByDescending(one => one.Duty is not null).ThenByDescending(one => one.When.Tests.Count).FirstOrDefault();

    /// <summary>First day of the model year: what was never reported as done counts from new.</summary>
    private static DateOnly? New(Case @case) =>
        @case.Vehicle.Number(Vehicle.AgeYears) is { } age ? @case.AsOf.AddDays(-(int)Math.Round(age * MeanYear.Days)) : null;

    private static DueStatus Status(double used, bool neverLate) => used switch
    {
        double.NegativeInfinity => DueStatus.Unknown,
        >= 1 when neverLate => DueStatus.Overdue,
        >= Overdue => DueStatus.Overdue,
        >= 1 => DueStatus.Due,
        >= Soon => DueStatus.Soon,
        _ => DueStatus.Later,
    };
}
