namespace Advice.Arithmetic.Batteries;

/// <summary>Voltage lost across a cable or connection while its current flows, and by Ohm's law its resistance and heat.</summary>
public static class VoltageDrop
{
    /// <summary>The largest good drop by circuit, V: trade rules.</summary>
    public static IReadOnlyDictionary<string, double> MostVolts { get; } = new Dictionary<string, double>
    {
        ["cranking"] = 0.5,
        ["ground"] = 0.2,
        ["charging"] = 0.5,
    };

    /// <summary>Resistance, mΩ.</summary>
    public static double MilliOhms(double drop, double amperes) => 1000 * drop / amperes;

    /// <summary>Heat at the place, W.</summary>
    public static double Watts(double drop, double amperes) => drop * amperes;
}
