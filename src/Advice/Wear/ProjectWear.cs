using Advice.Documents;
using Advice.Findings;
using Advice.Intake;
using Advice.Judging;
using Advice.Knowledge;

namespace Advice.Wear;

/// <summary>Answers when a wearing part reaches the limits that apply to it, each reckoned in the unit of its own text.</summary>
public sealed class ProjectWear(Catalogue catalogue, string revision)
{
    private readonly LimitChoice _limits = new(catalogue);

    /// <summary>Answers a request whose shape, ranges and ids were checked.</summary>
    /// <param name="request">The request.</param>
    /// <param name="today">The day that counts where the request names none.</param>
    public ProjectionDocument Of(ProjectionRequest request, DateOnly today)
    {
        var asOf = request.AsOf ?? today;
        var check = catalogue.Checks[request.Check];
        var @case = new Case { AsOf = asOf, Jurisdiction = request.Jurisdiction, Vehicle = VehicleReader.Read(request.Vehicle ?? new VehicleDescription(), asOf) };
        var limits = request.Limit is { } supplied ? [_limits.Supplied(check, supplied)] : _limits.For(check, request.Position, @case);
        var reckoned = limits.SelectMany(limit => Bounds(limit, request))
            .OrderBy(one => one.Result.Status == ProjectionStatus.Reached ? double.NegativeInfinity : one.Result.Expected?.Km ?? double.PositiveInfinity)
            .ThenByDescending(one => one.Limit.Deficiency).ThenBy(one => one.Limit.Id, StringComparer.Ordinal).ToList();
        var unit = request.Measurements[0].Odometer.Unit;
        return new ProjectionDocument
        {
            AsOf = asOf,
            RuleSet = new RuleSetStamp(revision, catalogue.Rules.Count, catalogue.Overlays),
            Check = check.Id,
            Position = request.Position,
            KmPerDay = reckoned.Select(one => one.Trend).FirstOrDefault(trend => trend.Band is not null) is { } trend ? Math.Round(trend.KmPerDay, 1) : null,
            Limits = [.. reckoned.Select(one => one.Written(asOf, unit))],
            Notes = Notes(request, reckoned.Count),
            Plot = request.Plot == true && reckoned.FirstOrDefault(one => one.Trend.Band is not null) is { } shown ? WearPlot.Of(shown.Trend, shown.Bound, shown.Limit.Unit, shown.Result) : null,
        };
    }

    private static IEnumerable<LimitReckoning> Bounds(Limit limit, ProjectionRequest request)
    {
        var readings = request.Measurements.Concat(request.New is { } fresh ? [fresh] : Array.Empty<MeasurementReport>())
            .Select(one => new Reading(UnitConversion.Convert(one.Odometer, "km")!.Value, one.On, UnitConversion.Convert(one.Value, one.Unit, limit.Unit)!.Value)).ToList();
        foreach (var (bound, wearsDown) in new[] { (limit.Minimum, true), (limit.Maximum, false) })
        {
            if (bound is not { } value)
                continue;
            var trend = WearTrend.Of(readings, wearsDown, Difference(request.GaugeError, limit.Unit));
            yield return new LimitReckoning(limit, value, trend, trend.To(value, wearsDown));
        }
    }

    // An error is a difference: for temperatures the zero of the scale must not count.
    private static double? Difference(Quantity? error, string unit) =>
        UnitConversion.Convert(error, unit) - (error is null ? null : UnitConversion.Convert(0, error.Unit, unit));

    private static List<string> Notes(ProjectionRequest request, int limits)
    {
        var notes = new List<string> { "Wear is taken to go on as so far, with the same driving; a part that binds, leaks or runs hot wears faster." };
        if (limits == 0)
            notes.Add("No limit for this is known here; give the maker's or the one stamped on the part as limit.");
        if (request.New is not null)
            notes.Add("The value when new counts as a reading.");
        return notes;
    }
}
