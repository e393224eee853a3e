using Advice.Knowledge.Conditions;

namespace Advice.Rules.Bench.Conditions;

/// <summary>What cases showed of the conditions of one rule.</summary>
internal sealed class ConditionTally(ConditionalRule rule)
{
    private readonly bool[] _fired = new bool[rule.Conditions.Count];
    private readonly bool[] _missed = new bool[rule.Conditions.Count];

    /// <summary>The rule.</summary>
    public ConditionalRule Rule => rule;

    /// <summary>The conditions that the rule itself states.</summary>
    public IEnumerable<CoveredCondition> Conditions => rule.Conditions.Index().Where(one => one.Item.Own)
        .Select(one => new CoveredCondition(rule.Kind, rule.Rule.Id, one.Item.Text, _fired[one.Index], _missed[one.Index]));

    /// <summary>Whether all of them were shown both ways.</summary>
    public bool IsComplete => Conditions.All(condition => condition.BothWays);

    /// <summary>Adds what a case shows.</summary>
    public void Add(CaseSight sight)
    {
        Span<bool> holds = stackalloc bool[_fired.Length];
        var (others, failed) = (1.0, -1);
        for (var i = 0; i < holds.Length; i++)
        {
            var standing = rule.Conditions[i].In(sight);
            holds[i] = standing.Truth == Truth.Yes;
            if (standing.Share > 0)
                others *= standing.Share;
            else if (failed >= 0 || _missed[i])
                return; // nothing to learn from it
            else
                failed = i;
        }

        if (others < rule.Least)
            return;
        var didFire = sight.Fired(rule.Rule);
        if (failed >= 0)
        {
            _missed[failed] |= !didFire;
            return;
        }

        for (var i = 0; i < holds.Length; i++)
            _fired[i] |= didFire && holds[i];
    }
}
