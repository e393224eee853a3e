using Advice.Documents.Requests;
using Advice.Judging;
using Advice.Knowledge;

namespace AdviceService.Requests;

/// <summary>Reads what was measured or seen.</summary>
/// <param name="catalogue">The rule set.</param>
/// <param name="asOf">The day asked for; nothing was found after it.</param>
internal sealed class FindingPart(Catalogue catalogue, DateOnly asOf)
{
    /// <summary>Reads one finding.</summary>
    public FindingReport Read(ObjectReader finding)
    {
        var check = finding.Required("check")?.Entry(catalogue.Checks, "check");
        var position = finding.Take("position");
        var (value, observation, limit) = (finding.Take("value"), finding.Take("observation"), finding.Take("limit"));
        var unit = value is null ? finding.Take("unit") : finding.Required("unit");
        Join(finding, value, unit, observation);
        if (limit is { } supplied && check is { Measure: null })
            supplied.Errors.BadValue(supplied.At, ErrorCode.UnfitForCheck, "This check is observed, not measured: it has no limit.");
        var its = unit?.UnitOf(check);
        var read = new FindingReport
        {
            Check = check?.Id ?? "",
            Position = position?.PositionOf(check, catalogue),
            Value = value?.ValueOf(check, its),
            Unit = its,
            Observation = observation?.ObservationOf(check),
            On = finding.Take("on")?.Date(AdvicePart.Earliest, asOf),
            Odometer = finding.Take("odometer")?.Object(QuantityPart.Odometer.Read),
            With = finding.Take("with")?.Object(new FindingInputs(check).Read),
            Limit = limit?.Object(new SuppliedLimitPart(check).Read),
        };
        if (check is not null && value is { } stated && read is { Value: not null, Unit: not null } && FindingArithmetic.Impossible(check, read) is { } why)
            stated.Errors.BadValue(stated.At, ErrorCode.OutOfRange, why);
        return read;
    }

    private static void Join(ObjectReader finding, JsonValue? value, JsonValue? unit, JsonValue? observation)
    {
        if (value is null && observation is null)
            finding.Errors.BadShape(finding.At, ErrorCode.MissingMember, "Must have a value or an observation.");
        if (value is not null && observation is not null)
            finding.Errors.BadShape(finding.At, ErrorCode.UnfitMember, "Must have a value or an observation, not both.");
        if (value is null && observation is not null && unit is { } alone)
            finding.Errors.BadShape(alone.At, ErrorCode.UnfitMember, "Goes with a value only.");
    }
}
