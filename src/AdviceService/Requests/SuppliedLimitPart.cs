using Advice.Documents;

namespace AdviceService.Requests;

/// <summary>Reads a limit that the caller supplies.</summary>
/// <param name="check">The check; null where it is not known.</param>
internal sealed class SuppliedLimitPart(Advice.Knowledge.Check? check)
{
    internal const int LongestSource = 200;

    /// <summary>Reads it.</summary>
    public SuppliedLimit Read(ObjectReader limit)
    {
        var (minimum, maximum) = (limit.Take("minimum"), limit.Take("maximum"));
        var (low, high) = (minimum?.Number(), maximum?.Number());
        if (minimum is null && maximum is null)
            limit.Errors.BadShape(limit.At, ErrorCode.MissingMember, "Must have a minimum, a maximum or both.");
        if (low > high)
            limit.Errors.BadValue(minimum!.Value.At, ErrorCode.OutOfRange, "Must not be above the maximum.");
        return new SuppliedLimit
        {
            Minimum = low,
            Maximum = high,
            Unit = limit.Required("unit")?.UnitOf(check) ?? "",
            Source = limit.Take("source")?.Text(LongestSource),
        };
    }
}
