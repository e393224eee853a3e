using System.Globalization;
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
        ["um"] = ("length", LengthUnit.Micrometer),
        ["in"] = ("length", LengthUnit.Inch),
        ["thou"] = ("length", LengthUnit.Mil),
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
        ["MPa"] = ("pressure", PressureUnit.Megapascal),
        ["hPa"] = ("pressure", PressureUnit.Hectopascal),
        ["inHg"] = ("pressure", PressureUnit.InchOfMercury),
        ["degC"] = ("temperature", TemperatureUnit.DegreeCelsius),
        ["°C"] = ("temperature", TemperatureUnit.DegreeCelsius),
        ["degF"] = ("temperature", TemperatureUnit.DegreeFahrenheit),
        ["°F"] = ("temperature", TemperatureUnit.DegreeFahrenheit),
        ["N"] = ("force", ForceUnit.Newton),
        ["kN"] = ("force", ForceUnit.Kilonewton),
        ["lbf"] = ("force", ForceUnit.PoundForce),
        ["Nm"] = ("torque", TorqueUnit.NewtonMeter),
        ["N·m"] = ("torque", TorqueUnit.NewtonMeter),
        ["lbf·ft"] = ("torque", TorqueUnit.PoundForceFoot),
        ["lbf·in"] = ("torque", TorqueUnit.PoundForceInch),
        ["ohm"] = ("resistance", ElectricResistanceUnit.Ohm),
        ["Ω"] = ("resistance", ElectricResistanceUnit.Ohm),
        ["kohm"] = ("resistance", ElectricResistanceUnit.Kiloohm),
        ["deg"] = ("angle", AngleUnit.Degree),
        ["°"] = ("angle", AngleUnit.Degree),
        ["percent"] = ("share", RatioUnit.Percent),
        ["%"] = ("share", RatioUnit.Percent),
        ["ppm"] = ("share", RatioUnit.PartPerMillion),
        ["km/h"] = ("speed", SpeedUnit.KilometerPerHour),
        ["mph"] = ("speed", SpeedUnit.MilePerHour),
        ["m/s"] = ("speed", SpeedUnit.MeterPerSecond),
        ["cm/s"] = ("speed", SpeedUnit.CentimeterPerSecond),
        ["m/s2"] = ("acceleration", AccelerationUnit.MeterPerSecondSquared),
        ["ft/s2"] = ("acceleration", AccelerationUnit.FootPerSecondSquared),
        ["mg"] = ("mass", MassUnit.Milligram),
        ["kg"] = ("mass", MassUnit.Kilogram),
        ["lb"] = ("mass", MassUnit.Pound),
        ["L"] = ("volume", VolumeUnit.Liter),
        ["qt"] = ("volume", VolumeUnit.UsQuart),
        ["mm2/s"] = ("kinematic viscosity", KinematicViscosityUnit.Centistokes),
        ["cSt"] = ("kinematic viscosity", KinematicViscosityUnit.Centistokes),
        ["mPa.s"] = ("dynamic viscosity", DynamicViscosityUnit.MillipascalSecond),
        ["cP"] = ("dynamic viscosity", DynamicViscosityUnit.Centipoise),
        ["s"] = ("duration", DurationUnit.Second),
    };

    // UnitsNet refuses a number that overflows on the way; none of our factors takes this one there.
    private const double Largest = 1e300;

    /// <summary>Every unit that a check may be measured in; what is counted or turns has no other unit here.</summary>
    public static IReadOnlyCollection<string> Known { get; } = [.. Units.Keys, "32nds", "count", "rpm", "kg/m3", "N/m", "N.s/m", "1/m", "lambda", "years", "kg/L"];

    /// <summary>Whether a value in the one unit can be given in the other.</summary>
    public static bool IsPossible(string from, string to) => from == to || (Quantity(from) is { } quantity && quantity == Quantity(to));

    /// <summary>Every unit that a value measured in that unit may be given in, ordered.</summary>
    public static IReadOnlyList<string> Accepted(string unit) =>
        [.. Units.Keys.Append("32nds").Append(unit).Distinct().Where(other => IsPossible(other, unit)).Order(StringComparer.Ordinal)];

    /// <summary>The quantity in another unit; null where there is none or the units do not fit.</summary>
    public static double? Convert(Documents.Quantity? quantity, string to) =>
        quantity is null ? null : Convert(quantity.Value, quantity.Unit, to);

    /// <summary>The same to twelve digits: more than any gauge has, and few enough that no conversion decides a verdict.</summary>
    public static double? ConvertAsRead(double value, string from, string to) => Convert(value, from, to) is { } converted
        ? double.Parse(converted.ToString("G12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
        : null;

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

    private static string? Quantity(string unit) => Units.GetValueOrDefault(unit == "32nds" ? "in" : unit).Quantity;
}
