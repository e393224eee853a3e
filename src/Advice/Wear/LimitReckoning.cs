using System.Globalization;
using Advice.Documents;
using Advice.Documents.Judgements;
using Advice.Findings;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Wear;

/// <summary>One bound of a limit with what was reckoned for it.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Bound">The bound, in the limit's unit.</param>
/// <param name="Trend">The readings in that unit.</param>
/// <param name="Result">When the bound is reached.</param>
internal sealed record LimitReckoning(Limit Limit, double Bound, WearTrend Trend, Projection Result)
{
    /// <summary>The same for an answer.</summary>
    /// <param name="asOf">The day that counts.</param>
    /// <param name="odometerUnit">Unit of distances.</param>
    /// <param name="say">Puts a sentence into words.</param>
    public LimitProjectionDocument Written(DateOnly asOf, string odometerUnit, Func<Saying, string> say) => new()
    {
        Limit = Limit.Text.Trade,
        Bound = new Amount(Bound, Limit.Unit),
        Source = Limit.Source.ToString(),
        Deficiency = Limit.Deficiency,
        Status = Result.Status,
        Text = say(Result.Because ?? Said(asOf, odometerUnit, say)),
        Per1000Km = Trend.Band is { } band ? Math.Round(band.Line.Slope * 1000, 5) : null,
        Expected = Written(Result.Expected, asOf, odometerUnit),
        Earliest = Written(Result.Earliest, asOf, odometerUnit),
        Latest = Written(Result.Latest, asOf, odometerUnit),
    };

    private static CrossingDocument? Written(Crossing? crossing, DateOnly asOf, string unit) => crossing is null
        ? null
        : new CrossingDocument(new Amount(Distance(crossing, unit), unit), crossing.On, crossing.On < asOf);

    private Saying Said(DateOnly asOf, string unit, Func<Saying, string> say)
    {
        var (at, first, last) = (Result.Expected!, Result.Earliest!, Result.Latest!);
        return new(Sentences.WornAt, Driven(at), Day(at), Number(first), Driven(last), Day(first), Day(last));

        string Driven(Crossing crossing) => $"{Number(crossing)} {unit}";
        string Number(Crossing crossing) => Distance(crossing, unit).ToString("#,0", CultureInfo.InvariantCulture);
        string Day(Crossing crossing) => crossing.On is not { } on ? say(new(Sentences.FarOff)) : on < asOf ? say(new(Sentences.DayPast, Written(on))) : Written(on);
        static string Written(DateOnly on) => on.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
    }

    private static double Distance(Crossing crossing, string unit) => Math.Round(UnitConversion.Convert(crossing.Km, "km", unit)!.Value);
}
