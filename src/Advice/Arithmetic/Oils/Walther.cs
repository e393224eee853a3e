namespace Advice.Arithmetic.Oils;

/// <summary>
/// Viscosity at a temperature from two measured ones: log₁₀ log₁₀(ν + 0.7) = A − B · log₁₀ T, T in kelvin (ASTM D341, the short form, for 2 mm²/s and
/// more, −70 … 370 °C, where the oil is all liquid).
/// </summary>
/// <param name="A">Constant of the line.</param>
/// <param name="B">Slope of the line; grows with the fall of viscosity.</param>
public sealed record Walther(double A, double B)
{
    /// <summary>Smallest viscosity that the short form holds for, mm²/s.</summary>
    public const double LeastViscosity = 2;

    private const double ZeroCelsius = 273.15;

    /// <summary>The line through two points, °C and mm²/s.</summary>
    public static Walther Through((double DegC, double Viscosity) first, (double DegC, double Viscosity) second)
    {
        var (x1, y1, x2, y2) = (LogTemperature(first.DegC), Double(first.Viscosity), LogTemperature(second.DegC), Double(second.Viscosity));
        var slope = (y1 - y2) / (x2 - x1);
        return new Walther(y1 + (slope * x1), slope);
    }

    /// <summary>Viscosity at a temperature, mm²/s.</summary>
    public double At(double degC) => Math.Pow(10, Math.Pow(10, A - (B * LogTemperature(degC)))) - 0.7;

    private static double LogTemperature(double degC) => Math.Log10(degC + ZeroCelsius);

    private static double Double(double viscosity) => Math.Log10(Math.Log10(viscosity + 0.7));
}
