using Advice.Documents.Requests;

namespace AdviceService.Requests;

/// <summary>Reads the maker's interval of a service.</summary>
internal static class IntervalPart
{
    internal const double LeastYears = 0.01;
    internal const double MostYears = 50;

    private static readonly QuantityPart Distance = new(QuantityPart.Odometer.Units, "km", 100, 1_000_000);

    /// <summary>Reads it.</summary>
    public static SuppliedInterval Read(ObjectReader interval)
    {
        var (distance, years) = (interval.Take("distance"), interval.Take("years"));
        if (distance is null && years is null)
            interval.Errors.BadShape(interval.At, ErrorCode.MissingMember, "Must have a distance, years or both.");
        var time = years?.Number();
        if (time is < LeastYears or > MostYears)
            years?.OutOfRange(LeastYears, MostYears, "years");
        return new SuppliedInterval { Distance = distance?.Object(Distance.Read), Years = time };
    }
}
