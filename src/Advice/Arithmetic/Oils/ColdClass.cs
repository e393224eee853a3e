namespace Advice.Arithmetic.Oils;

/// <summary>A W row of SAE J300, Table 1; the same in the editions from 1999 to 2024.</summary>
/// <param name="Number">The number before W.</param>
/// <param name="CrankingDegC">Temperature of the cranking test (D5293).</param>
/// <param name="MostCranking">Largest viscosity there, mPa·s.</param>
/// <param name="PumpingDegC">Temperature of the pumping test (D4684).</param>
/// <param name="LeastAt100">Smallest kinematic viscosity at 100 °C, mm²/s.</param>
public sealed record ColdClass(int Number, double CrankingDegC, double MostCranking, double PumpingDegC, double LeastAt100)
{
    /// <summary>Largest viscosity in the pumping test of every row, mPa·s.</summary>
    public const double MostPumping = 60000;

    /// <summary>The rows, from the coldest.</summary>
    public static IReadOnlyList<ColdClass> All { get; } =
    [
        new(0, -35, 6200, -40, 3.8),
        new(5, -30, 6600, -35, 3.8),
        new(10, -25, 7000, -30, 4.1),
        new(15, -20, 7000, -25, 5.6),
        new(20, -15, 9500, -20, 5.6),
        new(25, -10, 13000, -15, 9.3),
    ];
}
