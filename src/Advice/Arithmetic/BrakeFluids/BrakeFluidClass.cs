namespace Advice.Arithmetic.BrakeFluids;

/// <summary>A class of brake fluid with the least boiling points that 49 CFR 571.116 asks for, as restated; dry, and wet with about 3.7 % water.</summary>
/// <param name="Name">Its name.</param>
/// <param name="DryDegC">Least boiling point of new fluid.</param>
/// <param name="WetDegC">Least boiling point with water.</param>
/// <param name="TakesUpWater">Whether it dissolves water; silicone does not.</param>
public sealed record BrakeFluidClass(string Name, double DryDegC, double WetDegC, bool TakesUpWater)
{
    /// <summary>Water in the wet test, percent.</summary>
    public const double WetPercent = 3.7;

    // DOT 3 with 0, 1, 2, 3 % water: 401, 369, 320, 293 °F by trade figures, 284 °F at 3.7 % by the wet limit; here as the share of the way from dry to wet.
    private static readonly PiecewiseLinear ShareFallen =
        new((0, 0), (1, (401 - 369) / 117.0), (2, (401 - 320) / 117.0), (3, (401 - 293) / 117.0), (WetPercent, 1));

    /// <summary>The classes.</summary>
    public static IReadOnlyList<BrakeFluidClass> All { get; } =
        [new("DOT 3", 205, 140, true), new("DOT 4", 230, 155, true), new("DOT 5", 260, 180, false), new("DOT 5.1", 260, 180, true)];

    /// <summary>An estimate of the boiling point with so much water, °C, for a fluid that just met its class when new.</summary>
    public double EstimatedDegC(double waterPercent) => DryDegC - ((DryDegC - WetDegC) * ShareFallen.At(waterPercent));

    /// <summary>The class of a measured boiling point: as-new, used or below-wet-limit.</summary>
    public string Of(double degC) => degC >= DryDegC ? "as-new" : degC >= WetDegC ? "used" : "below-wet-limit";
}
