namespace Advice.Arithmetic.Coolants;

/// <summary>
/// Freezing point of a glycol in water by volume: ASHRAE Handbook Fundamentals 2001, table of the glycol, as restated with open data; between the
/// rows along straight lines. Beyond the last row the freezing point rises again, so nothing is said there.
/// </summary>
/// <param name="Table">Volume percent and °C.</param>
public sealed record Glycol(PiecewiseLinear Table)
{
    /// <summary>Ethylene glycol, 0 … 57.8 % by volume.</summary>
    public static Glycol Ethylene { get; } = new(new PiecewiseLinear(
        (0, 0), (4.4, -1.4), (8.9, -3.2), (13.6, -5.4), (18.1, -7.8), (20.1, -8.9), (22, -10.2), (22.9, -10.7), (23.9, -11.4), (25.8, -12.7), (27.7, -14.1),
        (29.6, -15.4), (31.6, -17), (32.6, -17.9), (33.5, -18.6), (34.5, -19.4), (35.5, -20.3), (36.5, -21.3), (37.5, -22.3), (39.5, -24.3),
        (41.5, -26.4), (42.5, -27.5), (44.5, -29.8), (46.6, -32.6), (47.6, -33.8), (48.6, -35.1), (49.6, -36.4), (50.6, -37.9), (51.6, -39.3),
        (52.7, -41.1), (54.7, -44.2), (56.8, -47.1), (57.8, -48.3)));

    /// <summary>Propylene glycol, 0 … 60 % by volume.</summary>
    public static Glycol Propylene { get; } = new(new PiecewiseLinear(
        (0, 0), (4.8, -1.6), (9.6, -3.3), (14.5, -5.1), (19.4, -7.1), (21.4, -8), (23.4, -9.1), (25.3, -10.2), (27.4, -11.4), (29.4, -12.7),
        (31.4, -14.1), (33.5, -15.6), (35.5, -17.3), (37.5, -19.1), (39.6, -21.1), (41.6, -23.2), (43.7, -25.5), (44.7, -26.7), (46.8, -29.3),
        (48.9, -32.1), (49.9, -33.5), (51.9, -36.6), (54, -39.8), (56, -43.3), (58, -47.1), (60, -51.1)));

    /// <summary>The largest concentration that the table covers, percent by volume.</summary>
    public double MostPercent => Table.Rows[^1].X;

    /// <summary>The lowest freezing point that the table covers, °C.</summary>
    public double LowestDegC => Table.Rows[^1].Y;

    /// <summary>Freezing point, °C.</summary>
    public double FreezesAt(double percentByVolume) => Table.At(percentByVolume);

    /// <summary>The concentration that freezes there, percent by volume.</summary>
    public double PercentFor(double degC) => Table.InverseAt(degC);
}
