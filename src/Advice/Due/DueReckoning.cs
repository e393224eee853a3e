using Advice.Documents.Dues;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Rules;
using Advice.Vehicles;

namespace Advice.Due;

/// <summary>What is due by distance and time, whichever comes first.</summary>
public sealed class DueReckoning
{
    private const double LikelyShare = 0.5;
    private const double Soon = 0.9;
    private const double Overdue = 1.1;

    // A law gives no grace: overdue from the day after, and on some engines from the day itself.
    private static readonly double Passed = Math.BitIncrement(1.0);
    private const double Reached = 1;
    private const int MonthsOfAYear = 12;

    private readonly Catalogue _catalogue;
    private readonly (ServiceItem Item, FitsRule[] Fits, Interval[] Intervals)[] _items;

    /// <summary>Dues by a rule set.</summary>
    public DueReckoning(Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        _catalogue = catalogue;
        // Intervals for a use, then for the fewest vehicles stand first.
        _items =
        [
            .. catalogue.Services.Values.OrderBy(item => item.Id, StringComparer.Ordinal).Select(item => (item, catalogue.FitsByService[item.Id].ToArray(),
                item.Intervals.OrderByDescending(one => one.Duty is not null).ThenByDescending(one => one.When.Tests.Count).ToArray())),
        ];
    }

    /// <summary>Every item that this vehicle has, the most pressing first, then by id.</summary>
    public IReadOnlyList<DueItem> Of(Case @case)
    {
        List<string> laws = [.. _catalogue.Laws(@case.Jurisdiction)];
        var due = new List<DueItem>(_items.Length);
        foreach (var (item, fits, intervals) in _items)
        {
            var done = @case.Services.GetValueOrDefault(item.Id);
            if (VehicleFit.Share(fits, @case.Vehicle) is > 0 and var share && (done?.MakersInterval ?? Ours(intervals, laws, @case)) is { } interval)
                due.Add(Reckon(item, interval, done, fits, share, @case));
        }

        return [.. due.OrderBy(item => item.Status)];
    }

    private DueItem Reckon(ServiceItem item, Interval interval, ServiceDone? done, FitsRule[] fits, double share, Case @case)
    {
        var recorded = done?.IsDated == true;
        var (from, fromKm) = recorded ? (done!.On, done.OdometerKm) : (New(@case), 0);
        var years = recorded ? interval.Years : interval.FirstYears ?? interval.Years;
        DateOnly? on = from is { } day && years is { } span ? day.AddMonths((int)Math.Round(span * MonthsOfAYear)) : null;
        double? atKm = fromKm + interval.Km;
        var now = @case.Vehicle.Number(Vehicle.OdometerKm);
        var daysPast = on is { } dueOn ? @case.AsOf.DayNumber - dueOn.DayNumber : (int?)null;
        var kmPast = now - atKm;
        var used = Math.Max(
            daysPast is { } days ? 1 + (days / (years!.Value * MeanYear.Days)) : double.NegativeInfinity,
            kmPast is { } km ? 1 + (km / interval.Km!.Value) : double.NegativeInfinity);
        var neverLate = item.NeverLate?.IsLikely(@case.Vehicle) == true && share >= LikelyShare;
        return new DueItem(item, interval, Status(used, neverLate ? Reached : interval.Jurisdiction is not null ? Passed : Overdue), recorded, on, atKm, daysPast, kmPast, VehicleFit.OnlyIf(fits, @case.Vehicle))
        {
            MayBeDone = !recorded && used >= 1 && !neverLate,
            Uses = interval.Duty is null ? [] : Uses(interval, @case.Vehicle),
        };
    }

    /// <summary>What of the use of the vehicle calls for that interval, as far as it was said.</summary>
    private List<VehicleUse> Uses(Interval interval, Vehicle vehicle) =>
    [
        .. vehicle.SevereUse.Where(kind => interval.Kinds.Count == 0 || interval.Kinds.Contains(kind))
            .Select(kind => new VehicleUse(kind, _catalogue.Facts[Vehicle.Duty].Kinds.GetValueOrDefault(interval.Duty!)?.GetValueOrDefault(kind) ?? kind)),
    ];

    /// <summary>Of the law that is nearest, then the first.</summary>
    private static Interval? Ours(Interval[] intervals, List<string> laws, Case @case) => intervals
        .Where(one => (one.Jurisdiction is null || laws.Contains(one.Jurisdiction)) && one.IsForUseOf(@case.Vehicle) && one.When.IsLikely(@case.Vehicle))
        .MinBy(one => one.Jurisdiction is { } law ? laws.IndexOf(law) : int.MaxValue);

    /// <summary>The first registration, else the first day of the model year: what was never reported as done counts from new.</summary>
    private static DateOnly? New(Case @case) =>
        @case.Vehicle.FirstRegistration is { } registered ? registered
        : @case.Vehicle.Number(Vehicle.AgeYears) is { } age ? @case.AsOf.AddDays(-(int)Math.Round(age * MeanYear.Days)) : null;

    private static DueStatus Status(double used, double overdue) => used switch
    {
        double.NegativeInfinity => DueStatus.Unknown,
        _ when used >= overdue => DueStatus.Overdue,
        >= 1 => DueStatus.Due,
        >= Soon => DueStatus.Soon,
        _ => DueStatus.Later,
    };
}
