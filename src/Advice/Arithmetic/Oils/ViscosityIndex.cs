namespace Advice.Arithmetic.Oils;

/// <summary>
/// Viscosity index (ASTM D2270, ISO 2909). With U = viscosity at 40 °C, Y at 100 °C, and L, H those at 40 °C of the reference oils of index 0 and 100
/// that have Y too: for U ≥ H, 100 · (L − U) / (L − H); for U &lt; H, 100 + (10^N − 1) / 0.00715 with N = log₁₀(H / U) / log₁₀ Y. Defined for Y ≥ 2 mm²/s.
/// L and H come from the standard's equations in Y, here as remembered; they give the printed table within 0.1 %.
/// </summary>
public static class ViscosityIndex
{
    /// <summary>Smallest viscosity at 100 °C that it is defined for, mm²/s.</summary>
    public const double LeastAt100 = 2;

    private static readonly (double From, double A, double B, double C, double D, double E, double F)[] Ranges =
    [
        (2.0, 1.14673, 1.7576, -0.109, 0.84155, 1.5521, -0.077),
        (3.8, 3.38095, -15.4952, 33.196, 0.78571, 1.7929, -0.183),
        (4.4, 2.5, -7.2143, 13.812, 0.82143, 1.5679, 0.119),
        (5.0, 0.101, 16.635, -45.469, 0.04985, 9.1613, -18.557),
        (6.4, 3.35714, -23.5643, 78.466, 0.22619, 7.7369, -16.656),
        (7.0, 0.01191, 21.475, -72.870, 0.79762, -0.7321, 14.610),
        (7.7, 0.41858, 16.1558, -56.040, 0.05794, 10.5156, -28.240),
        (9.0, 0.88779, 7.5527, -16.600, 0.26665, 6.7015, -10.810),
        (12, 0.7672, 10.7972, -38.180, 0.20073, 8.4658, -22.490),
        (15, 0.97305, 5.3135, -2.200, 0.28889, 5.9741, -4.930),
        (18, 0.97256, 5.25, -0.980, 0.24504, 7.416, -16.730),
        (22, 0.91413, 7.4759, -21.820, 0.20323, 9.1267, -34.230),
        (28, 0.87031, 9.7157, -50.770, 0.18411, 10.1015, -46.750),
        (40, 0.84703, 12.6752, -133.310, 0.17029, 11.4866, -80.620),
        (55, 0.85921, 11.1009, -83.190, 0.1713, 11.368, -76.940),
        (70, 0.83531, 14.6731, -216.246, 0.16841, 11.8493, -96.947),
    ];

    /// <summary>The index, not rounded; the standard reports whole numbers.</summary>
    /// <param name="at40">Kinematic viscosity at 40 °C, mm²/s.</param>
    /// <param name="at100">Kinematic viscosity at 100 °C, mm²/s.</param>
    public static double Of(double at40, double at100)
    {
        var (low, high) = References(at100);
        return at40 >= high
            ? 100 * (low - at40) / (low - high)
            : 100 + ((Math.Pow(10, Math.Log10(high / at40) / Math.Log10(at100)) - 1) / 0.00715);
    }

    /// <summary>L and H: viscosities at 40 °C of the oils of index 0 and 100, mm²/s.</summary>
    public static (double L, double H) References(double at100)
    {
        var r = Ranges.Last(range => range.From <= at100);
        return ((((r.A * at100) + r.B) * at100) + r.C, (((r.D * at100) + r.E) * at100) + r.F);
    }
}
