using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Rules.Bench.Conditions;

namespace Advice.Rules.Bench.Probes;

/// <summary>
/// Puts made-up cases for each rule through the engine: one that meets all its conditions, and that case with one thing changed. So it shows
/// that every rule can fire and be kept from it; whether what it says is right, only cases written by a person show.
/// </summary>
public sealed class RuleProbes(IRuleBook rules)
{
    private readonly Catalogue _catalogue = rules.Catalogue;
    private readonly Assessment _assessment = new(rules);
    private readonly ProbeCases _cases = new(rules.Catalogue);
    private readonly ProbeChanges _changes = new(rules.Catalogue);

    /// <summary>All rules of the set, by kind in the order of the rule format, then id.</summary>
    public IReadOnlyList<ProbedRule> Rules => [.. ConditionalRule.All(_catalogue).AsParallel().AsOrdered().Select(Probe)];

    private ProbedRule Probe(ConditionalRule rule)
    {
        var (tally, open, disagreements, tried) = (new ConditionTally(rule), new HashSet<int>(), 0, new List<CaseSight>());
        foreach (var met in _cases.Of(rule.Rule))
        {
            if (!Add(met).Fired(rule.Rule))
                continue;
            foreach (var opened in ProbeChanges.Opened(met, rule.Rule))
                Add(opened);
            foreach (var changed in _changes.Contradicted(met, rule.Rule).TakeWhile(_ => !tally.IsComplete))
                Add(changed);
            if (tally.IsComplete && IsAtWork(rule.Rule, tried))
                break;
        }

        IReadOnlyList<CoveredCondition> conditions = [.. tally.Conditions];
        return new ProbedRule(rule.Kind, rule.Rule.Id, conditions, open.Count, disagreements, Lacks(rule, conditions, tried));

        CaseSight Add(Case @case)
        {
            var sight = new CaseSight(_assessment.Of(@case), _catalogue);
            tried.Add(sight);
            tally.Add(sight);
            var standings = rule.Conditions.Select(condition => condition.In(sight)).ToList();
            var agrees = Agrees(rule, standings, sight);
            disagreements += agrees ? 0 : 1;
            if (agrees && standings.Count(standing => standing.Truth != Truth.Yes) == 1 && standings.FindIndex(standing => standing.Truth == Truth.Unknown) is var i and >= 0
                && rule.Conditions[i].Own)
                open.Add(i);
            return sight;
        }
    }

    /// <summary>Nothing records that something exists on a vehicle; a fits rule is held to keep out what it names.</summary>
    private static bool Agrees(ConditionalRule rule, List<Standing> standings, CaseSight sight) => rule.Rule is FitsRule fits
        ? fits.When.Test(sight.Case.Vehicle) != Truth.No || !ComesUp(fits, sight)
        : sight.Fired(rule.Rule) == standings.Aggregate(1.0, (share, standing) => share * standing.Share) >= rule.Least;

    /// <summary>Whether what a fits rule keeps out on other vehicles came up on one that has it.</summary>
    private static bool IsAtWork(Rule rule, List<CaseSight> tried) => rule is not FitsRule { Services.Count: 0 } fits || tried.Exists(sight => ComesUp(fits, sight));

    private static bool ComesUp(FitsRule fits, CaseSight sight) => fits.Faults.Any(sight.Links) || fits.Checks.Any(sight.Advises);

    private static string? Lacks(ConditionalRule rule, IReadOnlyList<CoveredCondition> conditions, List<CaseSight> tried)
    {
        if (tried.Count == 0)
            return "no vehicle that can have its fault meets its conditions, or nothing shows the fault";
        if (!conditions.Any(condition => condition.Fired))
            return $"it fired in none of {tried.Count} cases; in the first these fail: {Failing(rule, tried[0])}";
        if (!IsAtWork(rule.Rule, tried))
            return $"nothing that it names came up in any of {tried.Count} cases";
        return conditions.Any(condition => condition.Missed) ? null : $"whatever is changed, more than one condition fails: {Failing(rule, tried[^1])}";
    }

    private static string Failing(ConditionalRule rule, CaseSight sight) =>
        string.Join(", ", rule.Conditions.Where(condition => condition.In(sight).Share == 0).Select(condition => condition.Text).DefaultIfEmpty("none"));
}
