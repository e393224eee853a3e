using Advice.Knowledge.Words;

namespace Advice.Wear;

/// <summary>Readings of one part as a trend, or the reason why they are none.</summary>
/// <param name="Readings">The readings by distance.</param>
/// <param name="Band">The line and its band; null where there is none.</param>
/// <param name="Refusal">Why there is none.</param>
public sealed record WearTrend(IReadOnlyList<Reading> Readings, Band? Band, Saying? Refusal)
{
    private static readonly DateOnly LastDay = new(2100, 12, 31);

    /// <summary>Distance of a day, from the first to the last reading.</summary>
    public double KmPerDay => (Readings[^1].Km - Readings[0].Km) / (Readings[^1].On.DayNumber - Readings[0].On.DayNumber);

    /// <summary>The trend of readings.</summary>
    /// <param name="readings">The readings, in any order.</param>
    /// <param name="wearsDown">Whether the value falls with wear, as a thickness does; play grows.</param>
    /// <param name="gaugeError">What a reading may be wrong by in nine of ten cases; needed for two, and the least rise that counts as one.</param>
    public static WearTrend Of(IEnumerable<Reading> readings, bool wearsDown, double? gaugeError)
    {
        var ordered = readings.OrderBy(reading => reading.Km).ThenBy(reading => reading.On).ToList();
        var refusal = WhyNone(ordered, wearsDown, gaugeError ?? 0);
        if (refusal is not null)
            return new WearTrend(ordered, null, refusal);
        var line = LeastSquaresLine.Through([.. ordered.Select(reading => (reading.Km, reading.Value))]);
        if (wearsDown ? line.Slope >= 0 : line.Slope <= 0)
            return new WearTrend(ordered, null, new(Sentences.NoWear));
        return ordered.Count > 2 ? new WearTrend(ordered, Band.OfPrediction(line), null)
            : gaugeError is { } error ? new WearTrend(ordered, Band.OfGauge(line, error), null)
            : new WearTrend(ordered, null, new(Sentences.NoGauge));
    }

    /// <summary>When the part reaches a limit.</summary>
    public Projection To(double limit, bool wearsDown)
    {
        if (Readings.Count > 0 && (wearsDown ? Readings[^1].Value <= limit : Readings[^1].Value >= limit))
            return Projection.None(ProjectionStatus.Reached, new(Sentences.WornOut));
        if (Band is not { } band)
            return Projection.None(ProjectionStatus.Refused, Refusal!);
        if (band.Where(limit) is not var (first, last))
            return Projection.None(ProjectionStatus.NotDetermined, new(Sentences.ScatterTooMuch));
        var expected = band.Line.MeanX + ((limit - band.Line.MeanY) / band.Line.Slope);
        return new Projection(ProjectionStatus.Projected, null, Crossing(expected, Math.Round), Crossing(first, Math.Floor), Crossing(last, Math.Ceiling));
    }

    private static Saying? WhyNone(List<Reading> ordered, bool wearsDown, double noise)
    {
        if (ordered.Count < 2)
            return new(Sentences.OneReading);
        foreach (var (before, after) in ordered.Zip(ordered.Skip(1)))
        {
            if (after.On < before.On)
                return new(Sentences.OlderReading, Driven(after), Driven(before));
            var rise = wearsDown ? after.Value - before.Value : before.Value - after.Value;
            if (rise > Math.Max(noise, RiseOfAnotherPart * Math.Abs(ordered[0].Value)))
                return new(Sentences.GotBetter, Driven(before), Driven(after));
        }

        return ordered[^1].Km <= ordered[0].Km || ordered[^1].On <= ordered[0].On ? new(Sentences.OneDistance) : null;
    }

    private static string Driven(Reading reading) => FormattableString.Invariant($"{reading.Km:0} km");

    // A twentieth of the first reading: less may be a gauge held elsewhere, more is another part.
    private const double RiseOfAnotherPart = 0.05;

    private Crossing Crossing(double km, Func<double, double> round)
    {
        var day = Readings[^1].On.DayNumber + round((km - Readings[^1].Km) / KmPerDay);
        return new Crossing(round(km), day >= 0 && day <= LastDay.DayNumber ? DateOnly.FromDayNumber((int)day) : null);
    }
}
