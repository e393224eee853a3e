using Advice.Rules.Bench.Conditions;

namespace Advice.Rules.Bench.Probes;

/// <summary>What probes showed of a rule.</summary>
/// <param name="Kind">The kind of rule.</param>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Conditions">Its conditions.</param>
/// <param name="LeftOpen">How many of its conditions a probe left open, with the rule firing or not as the shares of vehicles say.</param>
/// <param name="Disagreements">Probes in which the engine did other than the conditions of the rule say; there should be none.</param>
/// <param name="Lacks">Why it was not shown both ways; null where it was.</param>
public sealed record ProbedRule(string Kind, string Rule, IReadOnlyList<CoveredCondition> Conditions, int LeftOpen, int Disagreements, string? Lacks)
{
    /// <summary>Whether it fired and, with one condition changed, did not.</summary>
    public bool BothWays => Lacks is null;
}
