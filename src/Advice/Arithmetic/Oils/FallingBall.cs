namespace Advice.Arithmetic.Oils;

/// <summary>Viscosity from a ball that sinks at a steady speed: η = 2/9 · r² · g · (ρ_ball − ρ_oil) / v (Stokes; for slow sinking, far from walls).</summary>
public static class FallingBall
{
    private const double Gravity = 9.80665;

    /// <summary>Dynamic viscosity, Pa·s.</summary>
    /// <param name="radius">Radius of the ball, m.</param>
    /// <param name="ball">Density of the ball, kg/m³.</param>
    /// <param name="oil">Density of the oil, kg/m³.</param>
    /// <param name="speed">Speed, m/s.</param>
    public static double PascalSeconds(double radius, double ball, double oil, double speed) => 2.0 / 9 * radius * radius * Gravity * (ball - oil) / speed;

    /// <summary>Density of a ball of that mass (kg) and radius (m), kg/m³.</summary>
    public static double Density(double mass, double radius) => mass / (4.0 / 3 * Math.PI * radius * radius * radius);
}
