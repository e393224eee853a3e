using Advice.Documents.Requests;
using Advice.Knowledge.Checks;

namespace AdviceService.Requests;

/// <summary>Reads a limit that the caller supplies.</summary>
/// <param name="check">The check; null where it is not known.</param>
internal sealed class SuppliedLimitPart(Check? check)
{
    internal const int LongestSource = 200;

    /// <summary>Reads it.</summary>
    public SuppliedLimit Read(ObjectReader limit)
    {
        var (minimum, maximum) = (limit.Take("minimum"), limit.Take("maximum"));
        var unit = limit.Required("unit")?.UnitOf(check);
        var (low, high) = (Bound(minimum, unit), Bound(maximum, unit));
        if (minimum is null && maximum is null)
            limit.Errors.BadShape(limit.At, ErrorCode.MissingMember, "Must have a minimum, a maximum or both.");
        if (low > high)
            limit.Errors.BadValue(minimum!.Value.At, ErrorCode.OutOfRange, "Must not be above the maximum.");
        return new SuppliedLimit
        {
            Minimum = low,
            Maximum = high,
            Unit = unit ?? "",
            Source = limit.Take("source")?.Text(LongestSource),
        };
    }

    // That an observed check has no limit is said once, of the limit as a whole.
    private double? Bound(JsonValue? bound, string? unit) => check is { Measure: null } ? bound?.Number() : bound?.ValueOf(check, unit);
}
