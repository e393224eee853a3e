namespace Advice.Arithmetic.Mixtures;

/// <summary>A fuel and the air that it needs: by mass balance (molar masses, 23.14 % oxygen in air by mass), or the figure that workshops use.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Stoichiometric">kg of air for each kg of fuel.</param>
public sealed record Fuel(string Name, double Stoichiometric)
{
    private const double Carbon = 12.011;
    private const double Hydrogen = 1.008;
    private const double Oxygen = 15.999;
    private const double OxygenInAir = 0.2314;
    private const double GasolineRatio = 14.7;
    private const double GasolineDensity = 0.745;
    private const double EthanolDensity = 0.789;

    /// <summary>The fuels.</summary>
    public static IReadOnlyList<Fuel> All { get; } =
    [
        new("gasoline", GasolineRatio),
        new("e10", Blend(0.10)),
        new("e15", Blend(0.15)),
        new("e85", Blend(0.85)),
        new("diesel", Ratio(1, 1.80, 0)),
        new("methane", Ratio(1, 4, 0)),
        new("propane", Ratio(3, 8, 0)),
        new("ethanol", Ratio(2, 6, 1)),
        new("methanol", Ratio(1, 4, 1)),
        new("hydrogen", Ratio(0, 2, 0)),
        new("iso-octane", Ratio(8, 18, 0)),
    ];

    /// <summary>kg of air that burns 1 kg of a fuel of that composition.</summary>
    public static double Ratio(double carbon, double hydrogen, double oxygen)
    {
        var mass = (carbon * Carbon) + (hydrogen * Hydrogen) + (oxygen * Oxygen);
        return 2 * Oxygen * (carbon + (hydrogen / 4) - (oxygen / 2)) / mass / OxygenInAir;
    }

    /// <summary>The same for gasoline with that share of ethanol by volume: ratios are weighted by mass.</summary>
    public static double Blend(double ethanolByVolume)
    {
        var (ethanol, gasoline) = (ethanolByVolume * EthanolDensity, (1 - ethanolByVolume) * GasolineDensity);
        return ((ethanol * Ratio(2, 6, 1)) + (gasoline * GasolineRatio)) / (ethanol + gasoline);
    }
}
