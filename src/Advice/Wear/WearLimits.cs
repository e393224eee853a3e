using Advice.Documents;
using Advice.Documents.Requests;
using Advice.Findings;
using Advice.Intake;
using Advice.Judging;
using Advice.Knowledge;
using Advice.Knowledge.Limits;

namespace Advice.Wear;

/// <summary>Reckons when a wearing part reaches the limits that apply to it, each in the unit of its own text.</summary>
internal sealed class WearLimits(Catalogue catalogue)
{
    private readonly LimitChoice _limits = new(catalogue);

    /// <summary>The vehicle of a request as a case.</summary>
    public static Case Case(ProjectionRequest request, DateOnly asOf) =>
        new() { AsOf = asOf, Jurisdiction = request.Jurisdiction, Vehicle = VehicleReader.Read(request.Vehicle ?? new VehicleDescription(), asOf) };

    /// <summary>Each bound of each limit, the one that is reached first in front.</summary>
    public IReadOnlyList<LimitReckoning> Of(ProjectionRequest request, Case @case)
    {
        var check = catalogue.Checks[request.Check];
        var limits = request.Limit is { } supplied ? [_limits.Supplied(check, supplied)] : _limits.For(check, request.Position, @case);
        return
        [
            .. limits.SelectMany(limit => Bounds(limit, request))
                .OrderBy(one => one.Result.Status == ProjectionStatus.Reached ? double.NegativeInfinity : one.Result.Expected?.Km ?? double.PositiveInfinity)
                .ThenByDescending(one => one.Limit.Deficiency).ThenBy(one => one.Limit.Id, StringComparer.Ordinal),
        ];
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
}
