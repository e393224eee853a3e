namespace Advice.Arithmetic.Drivelines;

/// <summary>
/// A universal (Hooke's) joint at an angle β: the driven shaft turns between cos β and 1 / cos β times as fast as the driving one, twice for each turn
/// (textbook kinematics). Two joints cancel where their angles are equal and the yokes in phase; what is left acts like one joint at √|β₁² − β₂²|.
/// </summary>
public static class UniversalJoint
{
    /// <summary>The angle of a joint that is bent by a in side view and by b in plan view, degrees: cos β = cos-law of the two slopes.</summary>
    public static double TrueAngle(double side, double plan)
    {
        var (a, b) = (Math.Tan(Radians(side)), Math.Tan(Radians(plan)));
        return Math.Atan(Math.Sqrt((a * a) + (b * b))) * 180 / Math.PI;
    }

    /// <summary>Fastest minus slowest over the speed of the driving shaft, percent.</summary>
    public static double FluctuationPercent(double degrees) => 100 * ((1 / Math.Cos(Radians(degrees))) - Math.Cos(Radians(degrees)));

    /// <summary>The angle of the one joint that two joints in phase act like, degrees.</summary>
    public static double Residual(double first, double second) => Math.Sqrt(Math.Abs((first * first) - (second * second)));

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
