namespace Advice.Arithmetic.Braking;

/// <summary>
/// Imbalance across an axle: (higher − lower) / higher. Limits on roller test beds: UK 25 % until 23 June 2013 and 30 % after; Directive 2014/45/EU
/// 30 % (major) and on a steered axle 50 % (dangerous), the latter from memory.
/// </summary>
public static class BrakeBalance
{
    /// <summary>Imbalance, percent.</summary>
    public static double ImbalancePercent(double left, double right)
    {
        var (low, high) = (Math.Min(left, right), Math.Max(left, right));
        return high == 0 ? 0 : 100 * (high - low) / high;
    }

    /// <summary>within, over-25, over-30 or over-50.</summary>
    public static string Of(double percent) => percent switch
    {
        > 50 => "over-50",
        > 30 => "over-30",
        > 25 => "over-25",
        _ => "within",
    };
}
