namespace Advice.Arithmetic.Operators;

/// <summary>
/// Risk rating of an operator from inspections (Directive 2014/47/EU, Annex I; weights as read in the proposal, formula from memory):
/// (3 D₁ + 2 D₂ + D₃) / (C₁ + C₂ + C₃), Dᵢ = 40 dangerous + 10 major + minor deficiencies of year i back, Cᵢ its checks.
/// </summary>
public static class RiskRating
{
    /// <summary>Points of a year.</summary>
    public static double Points(double dangerous, double major, double minor) => (40 * dangerous) + (10 * major) + minor;

    /// <summary>The rating; points and checks of three years, the last twelve months first.</summary>
    public static double Of(IReadOnlyList<double> points, IReadOnlyList<double> checks) =>
        points.Select((year, back) => (3 - back) * year).Sum() / checks.Sum();
}
