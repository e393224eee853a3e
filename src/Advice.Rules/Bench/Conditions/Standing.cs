using Advice.Knowledge.Conditions;

namespace Advice.Rules.Bench.Conditions;

/// <summary>How a condition stands in a case.</summary>
/// <param name="Truth">Whether it is known to hold or to fail.</param>
/// <param name="Share">Probability that it holds: 1 or 0 where it is known; 1 for an occasion that nobody stated.</param>
internal readonly record struct Standing(Truth Truth, double Share)
{
    /// <summary>Known to hold.</summary>
    public static readonly Standing Holds = new(Truth.Yes, 1);

    /// <summary>Known to fail.</summary>
    public static readonly Standing Fails = new(Truth.No, 0);

    /// <summary>Not spoken of, which keeps no rule from firing.</summary>
    public static readonly Standing Open = new(Truth.Unknown, 1);

    /// <summary>One of the two that are known.</summary>
    public static Standing Of(bool holds) => holds ? Holds : Fails;
}
