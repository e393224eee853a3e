namespace Advice.Arithmetic.Damping;

/// <summary>
/// What a damping ratio says of a damper. The trade suspects a damper after more than one or two rebounds; motion falls to a tenth, where the eye loses
/// it, in 1.2 cycles at 0.30 and in 1.8 at 0.20. The two bounds are our reading of that rule.
/// </summary>
public static class DampingClass
{
    /// <summary>From here on a corner settles at once.</summary>
    public const double Sound = 0.30;

    /// <summary>Below this it swings on.</summary>
    public const double Weak = 0.20;

    /// <summary>sound, doubtful or weak.</summary>
    public static string Of(double ratio) => ratio >= Sound ? "sound" : ratio >= Weak ? "doubtful" : "weak";
}
