namespace Advice.Arithmetic.Batteries;

/// <summary>
/// Specific gravity of the electrolyte: corrected to 80 °F by 0.004 for each 10 °F (added above, taken off below; rule of TM 5-4210-230-14&amp;P-1),
/// and the state of charge by the BCI table.
/// </summary>
public static class SpecificGravity
{
    private static readonly PiecewiseLinear Table = new((1.120, 0), (1.155, 25), (1.190, 50), (1.225, 75), (1.265, 100));

    /// <summary>The reading as it would be at 80 °F.</summary>
    public static double At80DegF(double reading, double degF) => reading + (0.004 * (degF - 80) / 10);

    /// <summary>State of charge in percent.</summary>
    /// <param name="gravity">Specific gravity at 80 °F.</param>
    public static double ChargePercent(double gravity) => Table.At(gravity);
}
