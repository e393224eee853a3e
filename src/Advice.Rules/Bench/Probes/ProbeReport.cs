using System.Globalization;
using Advice.Rules.Bench.Conditions;

namespace Advice.Rules.Bench.Probes;

/// <summary>What probes showed, beside what the cases written by hand showed, in lines for a person.</summary>
/// <param name="probed">The rules by probes.</param>
/// <param name="byCases">The conditions by cases.</param>
public sealed class ProbeReport(IReadOnlyList<ProbedRule> probed, IReadOnlyList<CoveredCondition> byCases)
{
    /// <summary>Share of the rules that probes showed both ways.</summary>
    public double RuleShare => Share(probed, rule => rule.BothWays);

    /// <summary>Share of the rules that the cases showed both ways.</summary>
    public double RuleShareByCases => Share([.. byCases.GroupBy(one => one.Rule)], IsBothWays);

    /// <summary>The lines.</summary>
    public IEnumerable<string> Lines(bool list)
    {
        yield return "Rules by made-up cases put through the engine: fired and, with one condition changed, not fired; beside it the same by the cases";
        foreach (var kind in probed.GroupBy(rule => rule.Kind))
            yield return Row($"{kind.Key} rules", [.. kind], [.. byCases.Where(one => one.Kind == kind.Key)]);
        yield return Row("all rules", probed, byCases);
        yield return $"{probed.Sum(rule => rule.LeftOpen)} conditions were left open as well (an occasion, a vehicle fact or a service that nobody stated); where a condition cannot be, it is not counted.";
        foreach (var rule in probed.Where(rule => !rule.BothWays))
            yield return $"          {rule.Rule} ({rule.Kind}): {rule.Lacks}";
        foreach (var rule in probed.Where(rule => rule.Disagreements > 0))
            yield return $"          {rule.Rule} ({rule.Kind}): in {rule.Disagreements} probes the engine did other than its conditions say";
        foreach (var condition in list ? probed.SelectMany(rule => rule.Conditions).Where(condition => !condition.BothWays) : [])
            yield return $"          {condition}";
    }

    private static string Row(string what, IReadOnlyList<ProbedRule> rules, IReadOnlyList<CoveredCondition> cases)
    {
        var (conditions, byRule) = (rules.SelectMany(rule => rule.Conditions).ToList(), cases.GroupBy(one => one.Rule).ToList());
        return $"{Percent(Share(rules, rule => rule.BothWays)),8}  {what,-14} {rules.Count,5} (by cases {Percent(Share(byRule, IsBothWays)),7}); "
            + $"conditions both ways {Percent(Share(conditions, one => one.BothWays)),7} of {conditions.Count,5} (by cases {Percent(Share(cases, one => one.BothWays)),7})";
    }

    private static bool IsBothWays(IEnumerable<CoveredCondition> rule) => rule.Any(one => one.Fired) && rule.Any(one => one.Missed);

    private static double Share<T>(IReadOnlyList<T> all, Func<T, bool> counts) => all.Count == 0 ? 1 : (double)all.Count(counts) / all.Count;

    // Rounded down, so that what is printed never says more than a threshold does.
    private static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(share * 1000) / 10:0.0} %");
}
