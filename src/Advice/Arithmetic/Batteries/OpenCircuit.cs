namespace Advice.Arithmetic.Batteries;

/// <summary>
/// State of charge of a flooded 12 V lead-acid battery at rest, from its open-circuit voltage: BCI table at 80 °F (26.7 °C), between its rows
/// along straight lines, 11.89 … 12.65 V. Other published ladders differ by up to 0.1 V, so the charge comes with the range over all three.
/// </summary>
public static class OpenCircuit
{
    /// <summary>Temperature of the table, °C (80 °F).</summary>
    public const double ReferenceDegC = 26.67;

    // +0.2 mV for each kelvin and cell, six cells: temperature coefficient of the lead-acid cell in handbooks, from memory.
    private const double VoltsPerKelvin = 6 * 0.0002;

    private static readonly PiecewiseLinear Table = new((11.89, 0), (12.06, 25), (12.24, 50), (12.45, 75), (12.65, 100));
    private static readonly PiecewiseLinear[] OtherLadders =
    [
        new((12.15, 25), (12.30, 50), (12.45, 75), (12.66, 100)),
        new((11.6, 0), (12.0, 25), (12.2, 50), (12.4, 75), (12.6, 100)),
    ];

    // °F: freezing point of the electrolyte by state of charge, same table.
    private static readonly PiecewiseLinear FreezingDegF = new((0, -10), (25, -16), (50, -34), (75, -55), (100, -75));

    /// <summary>The voltage that the battery would have at the temperature of the table.</summary>
    public static double AtReference(double volts, double degC) => volts + (VoltsPerKelvin * (ReferenceDegC - degC));

    /// <summary>State of charge in percent.</summary>
    /// <param name="volts">Open-circuit voltage at the temperature of the table.</param>
    public static double ChargePercent(double volts) => Table.At(volts);

    /// <summary>Least and most charge in percent that any of the published ladders gives.</summary>
    /// <param name="volts">Open-circuit voltage at the temperature of the table.</param>
    public static (double Least, double Most) ChargeRangePercent(double volts)
    {
        var all = OtherLadders.Select(ladder => ladder.At(volts)).Append(Table.At(volts)).ToList();
        return (all.Min(), all.Max());
    }

    /// <summary>Freezing point of the electrolyte, °F.</summary>
    public static double FreezesAtDegF(double chargePercent) => FreezingDegF.At(chargePercent);
}
