using Advice.Ranking;
using CsCheck;

namespace Advice.Tests.Ranking;

/// <summary>Random ranking tasks that are small enough to try every set of checks, and the harm that a set finds by its definition.</summary>
internal sealed record Choices(double[] Weights, CheckOption[] Options)
{
    // Bounds that are not whole: CsCheck draws mostly 0 and tiny numbers from whole ones.
    private static readonly Gen<double> Share = Gen.Double[0.01, 0.99];

    private static readonly Gen<double> Weight = Gen.Frequency((1, Gen.Const(0.0)), (6, Share), (2, Gen.Double[0.99, 20.5]));

    private static readonly Gen<double> Sureness = Gen.Frequency((1, Gen.Const(0.0)), (2, Gen.Const(1.0)), (8, Share));

    private static readonly Gen<int> Minutes = Gen.Frequency((3, Gen.Int[1, 10]), (1, Gen.Int[20, 60]));

    public static readonly Gen<Choices> Small =
        Gen.Int[1, 5].SelectMany(causes => Gen.Select(
            Weight.Array[causes],
            Gen.Select(
                Minutes,
                Gen.Select(Gen.Int[0, causes - 1], Sureness, (cause, surely) => new Detection(cause, surely)).Array[0, 4])
                .Array[1, 8],
            (weights, rows) => new Choices(
                weights,
                [.. rows.Select((row, index) => new CheckOption($"c{index}", row.Item1, [.. row.Item2.DistinctBy(detection => detection.Cause)]))])));

    public double HarmFound(IEnumerable<CheckOption> set)
    {
        var done = set.ToArray();
        return Weights.Select((weight, cause) => weight * (1 - done.Aggregate(1.0, (missed, option) => missed * (1 - Surely(option, cause))))).Sum();
    }

    public double BestHarmFound(double minutes) =>
        Enumerable.Range(0, 1 << Options.Length)
            .Select(set => Options.Where((_, index) => (set >> index & 1) == 1).ToArray())
            .Where(set => set.Sum(option => option.Minutes) <= minutes)
            .Max(HarmFound);

    public CheckOption[] Chosen(IEnumerable<RankedCheck> ranked) => [.. ranked.Select(check => Options.Single(option => option.Id == check.Id))];

    public static double Surely(CheckOption option, int cause) =>
        option.Detections.Where(detection => detection.Cause == cause).Select(detection => detection.Surely).DefaultIfEmpty().Max();
}
