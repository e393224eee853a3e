using Advice.Documents;
using Advice.Knowledge;
using Advice.Vehicles;

namespace Advice.Due;

/// <summary>What is due by distance and time, whichever comes first.</summary>
public sealed class DueReckoning(Catalogue catalogue)
{
    private const double DaysPerYear = 365.2425;
    private const double Soon = 0.9;
    private const double Overdue = 1.1;

    /// <summary>Every item that this vehicle has, by id.</summary>
    public IReadOnlyList<DueItem> Of(Case @case) =>
    [
        .. catalogue.Services.Values.OrderBy(item => item.Id, StringComparer.Ordinal)
            .Where(item => VehicleFit.Share(catalogue.FitsByService[item.Id], @case.Vehicle) > 0)
            .Select(item => Reckon(item, @case)).OfType<DueItem>(),
    ];

    private static DueItem? Reckon(ServiceItem item, Case @case)
    {
        var duty = @case.Vehicle.Word("duty");
        var interval = item.Intervals.Where(one => (one.Duty is null || one.Duty == duty) && one.When.IsLikely(@case.Vehicle))
            .OrderByDescending(one => one.Duty is not null).ThenByDescending(one => one.When.Tests.Count).FirstOrDefault();
        if (interval is null)
            return null;
        var known = @case.Services.TryGetValue(item.Id, out var done);
        var (from, fromKm) = known ? (done!.On, done.OdometerKm) : (New(@case), 0);
        DateOnly? on = from is { } day && interval.Years is { } years ? day.AddDays((int)Math.Round(years * DaysPerYear)) : null;
        double? atKm = fromKm + interval.Km;
        var now = @case.Vehicle.Number(Vehicle.OdometerKm);
        var daysPast = on is { } dueOn ? @case.AsOf.DayNumber - dueOn.DayNumber : (int?)null;
        var kmPast = now - atKm;
        var used = Math.Max(
            daysPast is { } days ? 1 + (days / (interval.Years!.Value * DaysPerYear)) : double.NegativeInfinity,
            kmPast is { } km ? 1 + (km / interval.Km!.Value) : double.NegativeInfinity);
        return new DueItem(item, interval, Status(used, known), on, atKm, daysPast, kmPast);
    }

    /// <summary>First day of the model year: what was never reported as done counts from new.</summary>
    private static DateOnly? New(Case @case) =>
        @case.Vehicle.Number(Vehicle.AgeYears) is { } age ? @case.AsOf.AddDays(-(int)Math.Round(age * DaysPerYear)) : null;

    /// <summary>An item that was not reported as done may have been done all the same: past its first interval nobody can tell.</summary>
    private static DueStatus Status(double used, bool known) => used switch
    {
        double.NegativeInfinity => DueStatus.Unknown,
        >= 1 when !known => DueStatus.Unknown,
        >= Overdue => DueStatus.Overdue,
        >= 1 => DueStatus.Due,
        >= Soon => DueStatus.Soon,
        _ => DueStatus.Later,
    };
}
