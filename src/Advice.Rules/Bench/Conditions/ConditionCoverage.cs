using Advice.Knowledge;

namespace Advice.Rules.Bench.Conditions;

/// <summary>Which conditions of rules the cases showed both ways: the rule fired with it, and it alone kept the rule from firing.</summary>
public sealed class ConditionCoverage
{
    private readonly List<ConditionTally> _rules;

    /// <summary>The coverage by cases that were assessed.</summary>
    public ConditionCoverage(Catalogue catalogue, IEnumerable<Advised> cases)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        _rules = [.. ConditionalRule.All(catalogue).Select(rule => new ConditionTally(rule))];
        foreach (var sight in cases.Select(advised => new CaseSight(advised, catalogue)))
        {
            foreach (var rule in _rules)
                rule.Add(sight);
        }
    }

    /// <summary>Every condition that a rule states, by kind in the order of the rule format, then rule.</summary>
    public IReadOnlyList<CoveredCondition> Conditions => [.. _rules.SelectMany(rule => rule.Conditions)];
}
