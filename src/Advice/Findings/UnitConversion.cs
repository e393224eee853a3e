using UnitsNet;
using UnitsNet.Units;

namespace Advice.Findings;

/// <summary>Conversion between the units that checks are measured in.</summary>
public static class UnitConversion
{
    // Parts are measured in lengths and roads in distances: a thickness given in kilometres is a slip, not a conversion.
    private static readonly Dictionary<string, (string Quantity, Enum Unit)> Units = new()
    {
        ["mm"] = ("length", LengthUnit.Millimeter),
        ["cm"] = ("length", LengthUnit.Centimeter),
        ["m"] = ("length", LengthUnit.Meter),
        ["in"] = ("length", LengthUnit.Inch),
        ["ft"] = ("length", LengthUnit.Foot),
        ["km"] = ("distance", LengthUnit.Kilometer),
        ["mi"] = ("distance", LengthUnit.Mile),
        ["V"] = ("voltage", ElectricPotentialUnit.Volt),
        ["mV"] = ("voltage", ElectricPotentialUnit.Millivolt),
        ["A"] = ("current", ElectricCurrentUnit.Ampere),
        ["mA"] = ("current", ElectricCurrentUnit.Milliampere),
        ["kPa"] = ("pressure", PressureUnit.Kilopascal),
        ["bar"] = ("pressure", PressureUnit.Bar),
        ["psi"] = ("pressure", PressureUnit.PoundForcePerSquareInch),
        ["degC"] = ("temperature", TemperatureUnit.DegreeCelsius),
        ["degF"] = ("temperature", TemperatureUnit.DegreeFahrenheit),
        ["percent"] = ("share", RatioUnit.Percent),
        ["%"] = ("share", RatioUnit.Percent),
    };

    // UnitsNet refuses a number that overflows on the way; none of our factors takes this one there.
    private const double Largest = 1e300;

    /// <summary>Every unit that a check may be measured in; what is counted or turned, resistance, the density of smoke or acid, a trace of gas and an age have no other unit here.</summary>
    public static IReadOnlyCollection<string> Known { get; } = [.. Units.Keys, "32nds", "count", "deg", "ohm", "rpm", "1/m", "ppm", "lambda", "years", "kg/L"];

    /// <summary>Whether a value in the one unit can be given in the other.</summary>
    public static bool IsPossible(string from, string to) => Convert(1, from, to) is not null;

    /// <summary>Every unit that a value measured in that unit may be given in, ordered.</summary>
    public static IReadOnlyList<string> Accepted(string unit) =>
        [.. Units.Keys.Append("32nds").Append(unit).Distinct().Where(other => IsPossible(other, unit)).Order(StringComparer.Ordinal)];

    /// <summary>The quantity in another unit; null where there is none or the units do not fit.</summary>
    public static double? Convert(Documents.Quantity? quantity, string to) =>
        quantity is null ? null : Convert(quantity.Value, quantity.Unit, to);

    /// <summary>The value in another unit; null where the units do not fit, infinite where it is too large. 32nds are thirty-seconds of an inch.</summary>
    public static double? Convert(double value, string from, string to)
    {
        if (from == to)
            return value;
        if (from == "32nds")
            return Convert(value / 32, "in", to);
        if (to == "32nds")
            return Convert(value, from, "in") * 32;
        if (!Units.TryGetValue(from, out var source) || !Units.TryGetValue(to, out var target) || source.Quantity != target.Quantity)
            return null;
        return Math.Abs(value) > Largest ? double.CopySign(double.PositiveInfinity, value) : UnitConverter.Convert(value, source.Unit, target.Unit);
    }
}
