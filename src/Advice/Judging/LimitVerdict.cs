using Advice.Findings;
using Advice.Knowledge.Limits;

namespace Advice.Judging;

/// <summary>A value held against one limit, in the limit's own unit: regulations round their metric equivalents.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Value">The value in the limit's unit.</param>
/// <param name="Deficiency">Its class if it is passed, else none.</param>
/// <param name="Margin">Distance from the nearer bound in the limit's unit; negative = beyond it.</param>
/// <param name="RelativeMargin">The same relative to the bound.</param>
public sealed record LimitVerdict(Limit Limit, double Value, Deficiency Deficiency, double Margin, double RelativeMargin)
{
    // Far below what any gauge resolves, far above what conversion rounds.
    private const double Resolution = 1e-9;

    /// <summary>Whether the limit is the law and not advice of the trade.</summary>
    public bool IsLaw => Limit.Jurisdiction is not null;

    /// <summary>The verdict on a value.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="value">The value.</param>
    /// <param name="unit">Its unit, which must fit that of the limit.</param>
    public static LimitVerdict Of(Limit limit, double value, string unit) => Of(
        limit, UnitConversion.Convert(value, unit, limit.Unit) ?? throw new ArgumentException($"'{unit}' cannot be given in '{limit.Unit}'.", nameof(unit)));

    /// <summary>The verdict on a value in the limit's own unit.</summary>
    public static LimitVerdict Of(Limit limit, double own)
    {
        var above = limit.Minimum is { } low ? own - low : double.PositiveInfinity;
        var below = limit.Maximum is { } high ? high - own : double.PositiveInfinity;
        var margin = Math.Min(above, below);
        var bound = Math.Abs((above <= below ? limit.Minimum : limit.Maximum) ?? 1);
        return new LimitVerdict(
            limit, own, margin < -Resolution ? limit.Deficiency : Deficiency.None, margin, margin / Math.Max(bound, Resolution));
    }
}
