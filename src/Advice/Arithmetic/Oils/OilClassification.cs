namespace Advice.Arithmetic.Oils;

/// <summary>
/// SAE J300 grade from measurements. The cold part is the lowest W row whose two cold tests, each at the row's own temperature, were done and passed;
/// the hot part the thickest row whose range holds the viscosity at 100 °C and whose high-shear minimum is met (8, 12, 16 and 20 overlap on purpose).
/// </summary>
public static class OilClassification
{
    /// <summary>The grade.</summary>
    /// <param name="at100">Kinematic viscosity at 100 °C, mm²/s.</param>
    /// <param name="sheared">Viscosity at 150 °C and high shear, mPa·s; null = not measured.</param>
    /// <param name="cranking">Cranking tests: °C and mPa·s.</param>
    /// <param name="pumping">Pumping tests: °C and mPa·s.</param>
    /// <param name="edition">Edition of J300, one of <see cref="HotClass.Editions"/>.</param>
    public static OilGrade Grade(
        double at100, double? sheared, IReadOnlyList<(double DegC, double Value)> cranking, IReadOnlyList<(double DegC, double Value)> pumping, string edition)
    {
        var cold = ColdClass.All.FirstOrDefault(row =>
            at100 >= row.LeastAt100 && Passed(cranking, row.CrankingDegC, row.MostCranking) && Passed(pumping, row.PumpingDegC, ColdClass.MostPumping));
        var light = cold is { Number: <= 10 };
        var hot = HotClass.Of(edition).LastOrDefault(row =>
            at100 >= row.LeastAt100 && at100 < row.BelowAt100 && (sheared ?? double.MaxValue) >= (light ? row.LeastSheared : row.LeastShearedHeavy));
        return new OilGrade(cold?.Number, hot?.Number);
    }

    private static bool Passed(IReadOnlyList<(double DegC, double Value)> tests, double degC, double most)
    {
        var there = tests.Where(test => Math.Abs(test.DegC - degC) < 0.05).ToList();
        return there.Count > 0 && there.All(test => test.Value <= most);
    }
}
