namespace Advice.Knowledge;

/// <summary>How a fault's odds change with distance and years.</summary>
/// <param name="Id">Its id.</param>
/// <param name="OdometerKm">Points (km, factor), ascending; empty = distance does not matter.</param>
/// <param name="AgeYears">Points (years, factor), ascending; empty = age does not matter.</param>
public sealed record Ageing(
    string Id, IReadOnlyList<(double At, double Factor)> OdometerKm, IReadOnlyList<(double At, double Factor)> AgeYears)
{
    /// <summary>Factor on the odds; 1 for whatever is not known.</summary>
    /// <param name="odometerKm">Distance, km, if known.</param>
    /// <param name="ageYears">Age, years, if known.</param>
    public double Factor(double? odometerKm, double? ageYears) => At(OdometerKm, odometerKm) * At(AgeYears, ageYears);

    private static double At(IReadOnlyList<(double At, double Factor)> points, double? x)
    {
        if (x is not { } at || points.Count == 0)
            return 1;
        if (at <= points[0].At)
            return points[0].Factor;
        for (var i = 1; i < points.Count; i++)
        {
            if (at > points[i].At)
                continue;
            var (x0, y0) = points[i - 1];
            var (x1, y1) = points[i];
            return y0 + ((y1 - y0) * (at - x0) / (x1 - x0));
        }

        return points[^1].Factor;
    }
}
