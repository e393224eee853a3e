namespace Advice.Arithmetic.Tyres;

/// <summary>Tyre pressure: the threshold of the warning lamp, and the change with temperature in a fixed volume.</summary>
public static class TyrePressure
{
    private const double AtmosphereKPa = 101.325;
    private const double ZeroCelsius = 273.15;

    /// <summary>The lamp must warn at 25 % below the placard (49 CFR 571.138 S4.2; the floor of its Table 1 may be higher).</summary>
    public static double WarnsAt(double placard) => 0.75 * placard;

    /// <summary>Gauge pressure at another temperature, kPa: p₂ = (p₁ + 101.325) · T₂ / T₁ − 101.325.</summary>
    public static double At(double gaugeKPa, double fromDegC, double toDegC) =>
        ((gaugeKPa + AtmosphereKPa) * (toDegC + ZeroCelsius) / (fromDegC + ZeroCelsius)) - AtmosphereKPa;
}
