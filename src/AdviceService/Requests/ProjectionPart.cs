using Advice.Documents;
using Advice.Documents.Requests;
using Advice.Findings;
using Advice.Knowledge;
using Advice.Knowledge.Checks;

namespace AdviceService.Requests;

/// <summary>Reads a question when a wearing part reaches its limit.</summary>
/// <param name="catalogue">The rule set.</param>
/// <param name="words">The words that describe a vehicle.</param>
/// <param name="today">The day that counts where the request names none.</param>
internal sealed class ProjectionPart(Catalogue catalogue, VehicleWords words, DateOnly today)
{
    internal const int MostMeasurements = 100;

    /// <summary>Reads it.</summary>
    public ProjectionRequest Read(ObjectReader request)
    {
        var given = request.Take("asOf");
        var asOf = given?.Date(AdvicePart.Earliest, AdvicePart.Latest);
        var day = asOf ?? (given is null ? today : AdvicePart.Latest);
        var named = request.Required("check");
        var check = named?.Entry(catalogue.Checks, "check");
        if (check is { Measure: null })
            named!.Value.Errors.BadValue(named.Value.At, ErrorCode.UnfitForCheck, "This check is observed, not measured: nothing can be projected.");
        var replaced = request.Take("replacedOn")?.Date(AdvicePart.Earliest, day);
        var measurements = request.Required("measurements");
        var read = measurements?.ObjectList(MostMeasurements, one => Measurement(one, check, day, replaced)) ?? [];
        if (measurements is { Json.ValueKind: System.Text.Json.JsonValueKind.Array } list && list.Json.GetArrayLength() == 0)
            list.Errors.BadValue(list.At, ErrorCode.TooFew, "Must have at least 1 element.");
        return new ProjectionRequest
        {
            AsOf = asOf,
            Jurisdiction = request.Take("jurisdiction")?.Entry(catalogue.Jurisdictions, "jurisdiction")?.Id,
            Vehicle = request.Take("vehicle")?.Object(new VehiclePart(words, day).Read),
            Check = check?.Id ?? "",
            Position = request.Take("position")?.PositionOf(check, catalogue),
            Measurements = read,
            New = request.Take("new")?.Object(one => Measurement(one, check, day, replaced)),
            GaugeError = request.Take("gaugeError")?.Object(one => GaugeError(one, check)),
            ReplacedOn = replaced,
            Limit = request.Take("limit")?.Object(new SuppliedLimitPart(check).Read),
            Plot = request.Take("plot")?.Truth(),
        };
    }

    private static MeasurementReport Measurement(ObjectReader measurement, Check? check, DateOnly asOf, DateOnly? replaced)
    {
        var (value, unit, on) = (measurement.Required("value"), measurement.Required("unit")?.UnitOf(check), measurement.Required("on"));
        var day = on?.Date(AdvicePart.Earliest, asOf);
        if (day < replaced)
            on!.Value.Errors.BadValue(on.Value.At, ErrorCode.UnfitTogether, "Is a reading of the part before the one that was fitted on replacedOn: leave it out.");
        return new MeasurementReport
        {
            Value = value?.ValueOf(check, unit) ?? 0,
            Unit = unit ?? "",
            On = day ?? asOf,
            Odometer = measurement.Required("odometer")?.Object(QuantityPart.Odometer.Read) ?? new Quantity { Value = 0, Unit = "km" },
        };
    }

    private static Quantity? GaugeError(ObjectReader error, Check? check)
    {
        var (value, unit) = (error.Required("value"), error.Required("unit")?.UnitOf(check));
        if (value?.Number() is not { } given || unit is null || check?.Measure is not { } measure || !UnitConversion.IsPossible(unit, measure.Unit))
            return null;
        // No gauge that is wrong by a third of what can be read at all measures anything.
        var most = (measure.PlausibleMaximum - measure.PlausibleMinimum) / 3;
        if (!(given > 0 && UnitConversion.Convert(given, unit, measure.Unit) - UnitConversion.Convert(0, unit, measure.Unit) <= most))
            value.Value.Errors.BadValue(value.Value.At, ErrorCode.OutOfRange, FormattableString.Invariant($"Must be above 0 and at most {most:0.#####} {measure.Unit}."));
        return new Quantity { Value = given, Unit = unit };
    }
}
