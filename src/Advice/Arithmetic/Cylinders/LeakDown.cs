namespace Advice.Arithmetic.Cylinders;

/// <summary>Leak-down: the share of the pressure that a cylinder at top dead centre loses. Bands of the trade: to 10 % sound, to 20 % worn, beyond leaking.</summary>
public static class LeakDown
{
    /// <summary>sound, worn, leaking, or uneven where the worst loses 10 points more than the best but less than 20 %.</summary>
    public static string Of(IReadOnlyList<double> percent) => percent.Max() switch
    {
        > 20 => "leaking",
        var most when most - percent.Min() > 10 => "uneven",
        > 10 => "worn",
        _ => "sound",
    };
}
