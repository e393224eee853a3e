using Advice.Knowledge.Limits;

namespace Advice.Judging;

/// <summary>A value held against all limits that apply to it.</summary>
internal sealed class Verdicts
{
    private Verdicts(LimitVerdict decisive, IReadOnlyList<LimitVerdict> all) => (Decisive, All) = (decisive, all);

    /// <summary>The one that decides: the worst class; among equals a law that is broken, then the limit that is closest to being passed,
    /// relative to its size.</summary>
    public LimitVerdict Decisive { get; }

    /// <summary>All of them, the decisive one first.</summary>
    public IReadOnlyList<LimitVerdict> All { get; }

    /// <summary>Our limits together; null where there are none.</summary>
    public static Verdicts? Of(IEnumerable<LimitVerdict> verdicts)
    {
        var ordered = TradeBesideLaw([.. verdicts]).OrderByDescending(verdict => verdict.Deficiency)
            .ThenByDescending(verdict => verdict.IsLaw && verdict.Deficiency > Deficiency.None).ThenBy(verdict => Math.Round(verdict.RelativeMargin, 9))
            .ThenBy(verdict => verdict.Limit.Id, StringComparer.Ordinal).ToList();
        return ordered.Count == 0 ? null : new Verdicts(ordered[0], ordered);
    }

    /// <summary>A limit that the caller supplies wins: what meets it is good, and what passes it is at least as bad as the law says.</summary>
    public static Verdicts WonBy(LimitVerdict supplied, Verdicts? ours)
    {
        var law = ours?.All.Where(verdict => verdict.IsLaw).Select(verdict => verdict.Deficiency).DefaultIfEmpty().Max() ?? Deficiency.None;
        var decisive = supplied.Deficiency > Deficiency.None && law > supplied.Deficiency ? supplied with { Deficiency = law } : supplied;
        return new Verdicts(decisive, [decisive, .. ours?.All ?? []]);
    }

    /// <summary>Where the law has a limit and it is met, advice of the trade alone makes no more than a minor deficiency.</summary>
    private static IReadOnlyList<LimitVerdict> TradeBesideLaw(IReadOnlyList<LimitVerdict> verdicts) =>
        !verdicts.Any(verdict => verdict.IsLaw) || verdicts.Any(verdict => verdict.IsLaw && verdict.Deficiency > Deficiency.None) ? verdicts
        : [.. verdicts.Select(verdict => verdict.Deficiency > Deficiency.Minor ? verdict with { Deficiency = Deficiency.Minor } : verdict)];
}
