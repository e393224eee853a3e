namespace Advice.Arithmetic.Coolants;

/// <summary>How much to drain and replace: V · (c₂ − c₁) / (c − c₁), by the balance of the concentrate in a system that is full before and after.</summary>
public static class DrainAndFill
{
    /// <summary>Litres to drain, and to fill in again.</summary>
    /// <param name="capacity">What the system holds, L.</param>
    /// <param name="present">Concentration now, percent by volume.</param>
    /// <param name="target">Concentration wanted; lies between the present one and that of the fill.</param>
    /// <param name="fill">Concentration of what is filled in: 100 = concentrate, 0 = water.</param>
    public static double Litres(double capacity, double present, double target, double fill) =>
        target == present ? 0 : capacity * (target - present) / (fill - present);

    /// <summary>Whether that fill can bring the target about.</summary>
    public static bool IsPossible(double present, double target, double fill) =>
        target == present || ((target > present) == (fill > present) && Math.Abs(target - present) <= Math.Abs(fill - present));
}
