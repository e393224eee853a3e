using Advice.Findings;
using Advice.Knowledge;

namespace Advice.Judging;

/// <summary>A value held against one limit, in the limit's own unit: regulations round their metric equivalents.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Deficiency">Its class if it is passed, else none.</param>
/// <param name="Margin">Distance from the nearer bound in the limit's unit; negative = beyond it.</param>
/// <param name="RelativeMargin">The same relative to the bound.</param>
public sealed record LimitVerdict(Limit Limit, Deficiency Deficiency, double Margin, double RelativeMargin)
{
    // Far below what any gauge resolves, far above what conversion rounds.
    private const double Resolution = 1e-9;

    /// <summary>The verdict on a value.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="value">The value.</param>
    /// <param name="unit">Its unit, which must fit that of the limit.</param>
    public static LimitVerdict Of(Limit limit, double value, string unit)
    {
        var own = UnitConversion.Convert(value, unit, limit.Unit)
            ?? throw new ArgumentException($"'{unit}' cannot be given in '{limit.Unit}'.", nameof(unit));
        var above = limit.Minimum is { } low ? own - low : double.PositiveInfinity;
        var below = limit.Maximum is { } high ? high - own : double.PositiveInfinity;
        var margin = Math.Min(above, below);
        var bound = Math.Abs((above <= below ? limit.Minimum : limit.Maximum) ?? 1);
        return new LimitVerdict(
            limit, margin < -Resolution ? limit.Deficiency : Deficiency.None, margin, margin / Math.Max(bound, Resolution));
    }
}
