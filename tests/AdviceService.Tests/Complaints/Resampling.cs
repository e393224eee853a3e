namespace AdviceService.Tests.Complaints;

/// <summary>
/// How far shares are chance: the middle 95 % of the shares of as many lines drawn with replacement (percentile bootstrap, Efron 1979, from memory).
/// The draws are seeded, so that the same lines give the same interval.
/// </summary>
internal static class Resampling
{
    private const int Draws = 2000;
    private const int Seed = 1;
    private const double Tail = 0.025;

    /// <summary>The bounds between which the share would fall in 95 of 100 samples, 0 … 1.</summary>
    /// <param name="holds">For each line whether it counts; at least one.</param>
    public static (double Low, double High) Interval(IReadOnlyList<bool> holds)
    {
        var random = new Random(Seed);
        var shares = Enumerable.Range(0, Draws).Select(_ => Enumerable.Range(0, holds.Count).Count(_ => holds[random.Next(holds.Count)]) / (double)holds.Count)
            .Order().ToList();
        return (shares[(int)(Tail * Draws)], shares[(int)((1 - Tail) * Draws) - 1]);
    }
}
