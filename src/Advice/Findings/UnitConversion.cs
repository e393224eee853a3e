using UnitsNet;
using UnitsNet.Units;

namespace Advice.Findings;

/// <summary>Conversion between the units that checks are measured in.</summary>
public static class UnitConversion
{
    private static readonly Dictionary<string, Enum> Units = new()
    {
        ["mm"] = LengthUnit.Millimeter,
        ["cm"] = LengthUnit.Centimeter,
        ["in"] = LengthUnit.Inch,
        ["km"] = LengthUnit.Kilometer,
        ["mi"] = LengthUnit.Mile,
        ["V"] = ElectricPotentialUnit.Volt,
        ["mV"] = ElectricPotentialUnit.Millivolt,
        ["kPa"] = PressureUnit.Kilopascal,
        ["bar"] = PressureUnit.Bar,
        ["psi"] = PressureUnit.PoundForcePerSquareInch,
        ["degC"] = TemperatureUnit.DegreeCelsius,
        ["degF"] = TemperatureUnit.DegreeFahrenheit,
    };

    /// <summary>Whether a value in the one unit can be given in the other.</summary>
    public static bool IsPossible(string from, string to) => Convert(1, from, to) is not null;

    /// <summary>Every unit that a value measured in that unit may be given in, ordered.</summary>
    public static IReadOnlyList<string> Accepted(string unit) =>
        [.. Units.Keys.Append("32nds").Append(unit).Distinct().Where(other => IsPossible(other, unit)).Order(StringComparer.Ordinal)];

    /// <summary>The quantity in another unit; null where there is none or the units do not fit.</summary>
    public static double? Convert(Documents.Quantity? quantity, string to) =>
        quantity is null ? null : Convert(quantity.Value, quantity.Unit, to);

    /// <summary>The value in another unit; null where the units do not fit. 32nds are thirty-seconds of an inch.</summary>
    public static double? Convert(double value, string from, string to)
    {
        if (from == to)
            return value;
        if (from == "32nds")
            return Convert(value / 32, "in", to);
        if (to == "32nds")
            return Convert(value, from, "in") * 32;
        return Units.TryGetValue(from, out var source) && Units.TryGetValue(to, out var target) && source.GetType() == target.GetType()
            ? UnitConverter.Convert(value, source, target)
            : null;
    }
}
