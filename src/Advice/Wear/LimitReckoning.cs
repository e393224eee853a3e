using System.Globalization;
using Advice.Documents;
using Advice.Findings;
using Advice.Knowledge;

namespace Advice.Wear;

/// <summary>One bound of a limit with what was reckoned for it.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Bound">The bound, in the limit's unit.</param>
/// <param name="Trend">The readings in that unit.</param>
/// <param name="Result">When the bound is reached.</param>
internal sealed record LimitReckoning(Limit Limit, double Bound, WearTrend Trend, Projection Result)
{
    /// <summary>The same for an answer.</summary>
    public LimitProjectionDocument Written(DateOnly asOf, string odometerUnit) => new()
    {
        Limit = Limit.Text.Trade,
        Bound = new Amount(Bound, Limit.Unit),
        Source = Limit.Source.ToString(),
        Deficiency = Limit.Deficiency,
        Status = Result.Status,
        Text = Result.Because ?? Said(asOf, odometerUnit),
        Per1000Km = Trend.Band is { } band ? Math.Round(band.Line.Slope * 1000, 5) : null,
        Expected = Written(Result.Expected, asOf, odometerUnit),
        Earliest = Written(Result.Earliest, asOf, odometerUnit),
        Latest = Written(Result.Latest, asOf, odometerUnit),
    };

    private static CrossingDocument? Written(Crossing? crossing, DateOnly asOf, string unit) => crossing is null
        ? null
        : new CrossingDocument(new Amount(Distance(crossing, unit), unit), crossing.On, crossing.On < asOf);

    private string Said(DateOnly asOf, string unit)
    {
        var (at, first, last) = (Result.Expected!, Result.Earliest!, Result.Latest!);
        return string.Create(CultureInfo.InvariantCulture,
            $"Reached at about {Distance(at, unit):#,0} {unit}, {Day(at)}{(at.On < asOf ? ", which is already past" : null)}; in nine of ten cases between {Distance(first, unit):#,0} and {Distance(last, unit):#,0} {unit}, {Day(first)}{(first.On < asOf ? " (already past)" : null)} to {Day(last)}{(last.On < asOf ? " (already past)" : null)}.");
    }

    private static string Day(Crossing crossing) => crossing.On is { } day ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : "after 2100";

    private static double Distance(Crossing crossing, string unit) => Math.Round(UnitConversion.Convert(crossing.Km, "km", unit)!.Value);
}
