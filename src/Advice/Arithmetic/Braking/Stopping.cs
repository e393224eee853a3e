namespace Advice.Arithmetic.Braking;

/// <summary>Stopping: v² / (2 a), and v · t before the brakes act; efficiency = deceleration / g, for a level dry road and a steady deceleration.</summary>
public static class Stopping
{
    private const double Gravity = 9.80665;

    /// <summary>Distance while braking, m.</summary>
    public static double Distance(double metresPerSecond, double deceleration) => metresPerSecond * metresPerSecond / (2 * deceleration);

    /// <summary>Distance before the brakes act, m.</summary>
    public static double Before(double metresPerSecond, double seconds) => metresPerSecond * seconds;

    /// <summary>Mean deceleration that stops within a distance, m/s².</summary>
    public static double Deceleration(double metresPerSecond, double metres) => metresPerSecond * metresPerSecond / (2 * metres);

    /// <summary>Deceleration as a share of gravity, percent; the same as braking force over weight.</summary>
    public static double EfficiencyPercent(double deceleration) => 100 * deceleration / Gravity;

    /// <summary>Braking force over weight, percent.</summary>
    public static double EfficiencyPercent(double newtons, double kilograms) => 100 * newtons / (kilograms * Gravity);
}
