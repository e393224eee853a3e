namespace Advice.Arithmetic.Mixtures;

/// <summary>
/// Lambda from four exhaust gases: the balance of Brettschneider (Bosch Technische Berichte 6, 1979, p. 177), gasoline with H/C 1.7261 and O/C 0.0176,
/// water-gas constant 3.5, hydrocarbons as hexane with a factor of 6. NO is left out; it adds less than 0.005. Not for diesel, nor with air pumped in.
/// </summary>
public static class ExhaustLambda
{
    private const double HydrogenToCarbon = 1.7261;
    private const double OxygenToCarbon = 0.0176;
    private const double WaterGas = 3.5;

    // Six carbon atoms for each hexane, ppm to volume percent.
    private const double CarbonPercentPerPpm = 6e-4;

    /// <summary>Lambda: 1 = exactly the air that the fuel needs, less = rich.</summary>
    /// <param name="co">Carbon monoxide, volume percent.</param>
    /// <param name="co2">Carbon dioxide, volume percent, above 0.</param>
    /// <param name="hydrocarbonsPpm">Hydrocarbons as hexane, ppm.</param>
    /// <param name="o2">Oxygen, volume percent.</param>
    public static double Of(double co, double co2, double hydrocarbonsPpm, double o2)
    {
        var needed = co2 + (co / 2) + o2
            + (((HydrogenToCarbon / 4 * WaterGas / (WaterGas + (co / co2))) - (OxygenToCarbon / 2)) * (co2 + co));
        return needed / ((1 + (HydrogenToCarbon / 4) - (OxygenToCarbon / 2)) * (co2 + co + (CarbonPercentPerPpm * hydrocarbonsPpm)));
    }
}
