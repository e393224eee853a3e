namespace Advice.Arithmetic.OxygenSensors;

/// <summary>Voltage of an oxygen cell: E = R T ln 10 / (4 F) · log₁₀(p_air / p_exhaust), four electrons for each molecule; 0.049605 mV for each kelvin.</summary>
public static class NernstCell
{
    /// <summary>Partial pressure of oxygen in dry air, atm.</summary>
    public const double Air = 0.2095;

    private const double GasConstant = 8.314462618;
    private const double Faraday = 96485.33212;
    private const double ZeroCelsius = 273.15;

    /// <summary>mV for each decade of pressure.</summary>
    public static double MillivoltsPerDecade(double degC) => 1000 * GasConstant * (degC + ZeroCelsius) * Math.Log(10) / (4 * Faraday);

    /// <summary>Voltage in mV.</summary>
    /// <param name="degC">Temperature of the cell.</param>
    /// <param name="exhaust">Partial pressure of oxygen in the exhaust, atm.</param>
    public static double Millivolts(double degC, double exhaust) => MillivoltsPerDecade(degC) * Math.Log10(Air / exhaust);

    /// <summary>Partial pressure of oxygen in the exhaust at that voltage, atm.</summary>
    public static double Exhaust(double degC, double millivolts) => Air * Math.Pow(10, -millivolts / MillivoltsPerDecade(degC));
}
