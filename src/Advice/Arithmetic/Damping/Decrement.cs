namespace Advice.Arithmetic.Damping;

/// <summary>
/// Logarithmic decrement δ = ln(x₀ / xₙ) / n over n whole cycles, and the damping ratio ζ = δ / √(4π² + δ²); from a spring, a mass and a damper
/// ζ = c / (2 √(k m)). For a body that swings back at least once (ζ &lt; 1); a decrement tells little above ζ ≈ 0.5.
/// </summary>
public static class Decrement
{
    /// <summary>The decrement.</summary>
    /// <param name="first">An amplitude.</param>
    /// <param name="last">The amplitude so many cycles later.</param>
    /// <param name="cycles">Whole cycles between the two: one less than the number of peaks counted.</param>
    public static double FromAmplitudes(double first, double last, double cycles) => Math.Log(first / last) / cycles;

    /// <summary>The damping ratio of a decrement.</summary>
    public static double Ratio(double decrement) => decrement / Math.Sqrt((4 * Math.PI * Math.PI) + (decrement * decrement));

    /// <summary>The decrement of a damping ratio below 1.</summary>
    public static double OfRatio(double ratio) => 2 * Math.PI * ratio / Math.Sqrt(1 - (ratio * ratio));

    /// <summary>Damping at which the body no longer swings, N·s/m.</summary>
    /// <param name="mass">kg.</param>
    /// <param name="stiffness">N/m.</param>
    public static double Critical(double mass, double stiffness) => 2 * Math.Sqrt(stiffness * mass);

    /// <summary>Cycles until a tenth of the amplitude is left.</summary>
    public static double CyclesToTenth(double ratio) => Math.Log(10) / OfRatio(ratio);
}
