using Advice.Arithmetic;

namespace Advice.FreezeFrames;

/// <summary>
/// What a freeze frame may hold: the values that the engine control stored at the moment of a fault, each in the unit and range of the parameter of
/// that meaning in SAE J1979 (from memory), whose number is named where it is made.
/// </summary>
public static class FrameInputs
{
    // The ranges are those that the standard's one or two bytes can carry, so that a value beyond them was not read from a vehicle.
    private static readonly NumberInput[] Numbers =
    [
        Number("engineSpeed", "speed of the engine (0C)", "rpm", 0, 16384),
        Number("vehicleSpeed", "speed of the vehicle (0D)", "km/h", 0, 255),
        Number("engineLoad", "calculated load of the engine (04)", "percent", 0, 100),
        Number("coolantTemperature", "temperature of the coolant (05)", "degC", -40, 215),
        Number("intakeTemperature", "temperature of the air drawn in (0F)", "degC", -40, 215),
        Number("ambientTemperature", "temperature of the air outside (46)", "degC", -40, 215),
        Number("oilTemperature", "temperature of the engine oil (5C)", "degC", -40, 215),
        Number("shortTermBank1", "short-term fuel trim, bank 1 (06)", "percent", -100, 100),
        Number("longTermBank1", "long-term fuel trim, bank 1 (07)", "percent", -100, 100),
        Number("shortTermBank2", "short-term fuel trim, bank 2 (08)", "percent", -100, 100),
        Number("longTermBank2", "long-term fuel trim, bank 2 (09)", "percent", -100, 100),
        Number("fuelPressure", "pressure of the fuel above that of the air (0A)", "kPa", 0, 765),
        Number("intakePressure", "absolute pressure in the intake manifold (0B)", "kPa", 0, 255),
        Number("barometricPressure", "absolute pressure of the air outside (33)", "kPa", 0, 255),
        Number("airFlow", "air drawn in (10)", "g/s", 0, 656),
        Number("throttle", "opening of the throttle (11)", "percent", 0, 100),
        Number("timingAdvance", "ignition before top dead centre of cylinder 1 (0E)", "deg", -64, 64),
        Number("runTime", "time since the engine was started (1F)", "s", 0, 65535),
        Number("fuelLevel", "fuel in the tank (2F)", "percent", 0, 100),
        Number("controlModuleVoltage", "supply voltage of the engine control (42)", "V", 0, 66),
    ];

    /// <summary>Every member, in the order in which an answer speaks of them.</summary>
    public static IReadOnlyList<Input> All { get; } =
    [
        .. Numbers,
        new WordInput(
            "fuelSystemStatus", "how the mixture was controlled (03)", "closedLoop", "openLoopCold", "openLoopLoad", "openLoopFault", "closedLoopFault") { Optional = true },
    ];

    private static NumberInput Number(string name, string what, string unit, double least, double most) => new(name, what, unit, least, most) { Optional = true };
}
