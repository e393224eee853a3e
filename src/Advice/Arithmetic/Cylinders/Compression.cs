namespace Advice.Arithmetic.Cylinders;

/// <summary>
/// Compression pressures against each other. Published rules differ: the lowest at least 75 % of the highest (TM 5-4210-230-14&amp;P-1), or at least 70 %
/// and never below 100 psi (a maker's service text); aircraft practice looks at 20 % below the average.
/// </summary>
public static class Compression
{
    /// <summary>Floor of the milder rule, kPa (100 psi).</summary>
    public const double FloorKPa = 689.476;

    /// <summary>Lowest as a share of the highest, percent.</summary>
    public static double LowestPercent(IReadOnlyList<double> pressures) => 100 * pressures.Min() / pressures.Max();

    /// <summary>The least that a cylinder may have under the milder rule, kPa.</summary>
    public static double LeastByMilderRule(double highest) => Math.Max(0.70 * highest, FloorKPa);

    /// <summary>The least that a cylinder may have under the stricter rule, in the unit of the highest.</summary>
    public static double LeastByStricterRule(double highest) => 0.75 * highest;

    /// <summary>Cylinders below the stricter rule, counted from 1.</summary>
    public static IReadOnlyList<int> Low(IReadOnlyList<double> pressures) =>
        [.. Enumerable.Range(1, pressures.Count).Where(cylinder => pressures[cylinder - 1] < LeastByStricterRule(pressures.Max()))];

    /// <summary>even, doubtful (the rules differ), low-overall (even, but all below the floor), uneven, or uneven-neighbours (two low ones side by side).</summary>
    public static string Of(IReadOnlyList<double> kPa)
    {
        var low = Low(kPa);
        if (kPa.Max() < FloorKPa)
            return "low-overall";
        if (low.Count == 0)
            return kPa.Min() < FloorKPa ? "doubtful" : "even";
        if (kPa.Min() >= LeastByMilderRule(kPa.Max()))
            return "doubtful";
        return low.Zip(low.Skip(1), (one, next) => next - one).Contains(1) ? "uneven-neighbours" : "uneven";
    }
}
