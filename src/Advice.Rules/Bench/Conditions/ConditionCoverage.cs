using Advice.Knowledge;

namespace Advice.Rules.Bench.Conditions;

/// <summary>Which conditions of rules the cases showed both ways: the rule fired with it, and it alone kept the rule from firing.</summary>
public sealed class ConditionCoverage
{
    private static readonly List<string> Kinds = ["shows", "prone", "fits", "implies", "warns", "driving", "normal"];

    private readonly List<(ConditionalRule Rule, bool[] Fired, bool[] Missed)> _rules;

    /// <summary>The coverage by cases that were assessed.</summary>
    public ConditionCoverage(Catalogue catalogue, IEnumerable<Advised> cases)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        _rules =
        [
            .. catalogue.Rules.Values.Select(rule => ConditionalRule.Of(rule, catalogue))
                .OrderBy(rule => Kinds.IndexOf(rule.Kind)).ThenBy(rule => rule.Rule.Id, StringComparer.Ordinal)
                .Select(rule => (rule, new bool[rule.Conditions.Count], new bool[rule.Conditions.Count])),
        ];
        foreach (var sight in cases.Select(advised => new CaseSight(advised, catalogue)))
            Add(sight);
    }

    /// <summary>Every condition that a rule states, by kind in the order of the rule format, then rule.</summary>
    public IReadOnlyList<CoveredCondition> Conditions =>
    [
        .. _rules.SelectMany(one => one.Rule.Conditions.Select((condition, i) => (condition.Own, Seen: new CoveredCondition(
            one.Rule.Kind, one.Rule.Rule.Id, condition.Text, one.Fired[i], one.Missed[i])))).Where(one => one.Own).Select(one => one.Seen),
    ];

    private void Add(CaseSight sight)
    {
        foreach (var (rule, fired, missed) in _rules)
            Add(sight, rule, fired, missed);
    }

    private static void Add(CaseSight sight, ConditionalRule rule, bool[] fired, bool[] missed)
    {
        Span<bool> holds = stackalloc bool[fired.Length];
        var (others, failed) = (1.0, -1);
        for (var i = 0; i < holds.Length; i++)
        {
            var standing = rule.Conditions[i].In(sight);
            holds[i] = standing.Truth == Truth.Yes;
            if (standing.Share > 0)
                others *= standing.Share;
            else if (failed >= 0 || missed[i])
                return; // nothing to learn from it
            else
                failed = i;
        }

        if (others < rule.Least)
            return;
        var didFire = sight.Fired(rule.Rule);
        if (failed >= 0)
        {
            missed[failed] |= !didFire;
            return;
        }

        for (var i = 0; i < holds.Length; i++)
            fired[i] |= didFire && holds[i];
    }
}
