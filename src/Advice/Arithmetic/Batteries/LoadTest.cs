namespace Advice.Arithmetic.Batteries;

/// <summary>The least voltage under load (half of the cold-cranking amperes for 15 s, battery at least 75 % charged): BCI table, 0 … 70 °F.</summary>
public static class LoadTest
{
    private static readonly PiecewiseLinear Table =
        new((0, 8.5), (10, 8.7), (20, 8.9), (30, 9.1), (40, 9.3), (50, 9.4), (60, 9.5), (70, 9.6));

    /// <summary>The least voltage at that temperature; above 70 °F that of 70 °F.</summary>
    public static double LeastVolts(double degF) => Table.At(degF);
}
