using Advice.Knowledge;

namespace Advice.Rules.Checking;

/// <summary>Rules about the same thing under the same conditions: they say it twice, or contradict each other.</summary>
internal sealed class Repetitions(Tables tables, Problems problems)
{
    /// <summary>Checks all kinds of rule of which two cannot stand side by side.</summary>
    public void Check()
    {
        Each<ShowsRule>(rule => [(Key(rule, rule.Fault, rule.Sign.ToString(), Circumstances(rule.Occasions, rule.Without)), "")], "fault, sign, occasions and vehicles");
        Each<DrivingRule>(
            rule => [(Key(rule, Conditions.Sorted(rule.Symptoms), rule.Fault, $"{rule.Probability}", Circumstances(rule.Occasions, rule.Without)), FormatWords.Of(rule.Advice))],
            "trigger, occasions and vehicles");
        Each<ProneRule>(rule => rule.Faults.Select(fault => (Key(rule, fault, $"{rule.Service}"), FormattableString.Invariant($"odds of {rule.Odds}"))), "fault, service and vehicles");
        Each<ImpliesRule>(rule => [(Key(rule, $"{rule.Sign}", $"{rule.Implied}", Circumstances(rule.Occasions, rule.Without)), "")], "signs, occasions and vehicles");
        Each<WarnsRule>(
            rule => rule.Checks.DefaultIfEmpty("").Select(check => (
                Key(rule, Conditions.Sorted(rule.Symptoms), check, rule.Fault, $"{rule.Probability}", rule.Caution, Circumstances(rule.Occasions, rule.Without)), "")),
            "trigger, caution, occasions and vehicles");
    }

    private void Each<T>(Func<T, IEnumerable<(string About, string Says)>> statements, string same)
        where T : Rule
    {
        var all = tables.Rules.Bound.OfType<T>().SelectMany(statements, (rule, statement) => (rule, statement.About, statement.Says));
        foreach (var group in all.GroupBy(one => one.About))
        {
            var (first, _, said) = group.First();
            foreach (var (rule, _, says) in group.Skip(1).DistinctBy(one => one.rule.Id))
            {
                problems.Add(tables.Rules.PlaceOf(rule.Id), says == said
                    ? $"'{rule.Id}' says again what '{first.Id}' says: same {same}; keep one"
                    : $"'{rule.Id}' says {says} where '{first.Id}' says {said}: same {same}; keep one");
            }
        }
    }

    private static string Key(Rule rule, params string?[] about) => string.Join('|', [.. about, Conditions.Key(rule.When.Tests)]);

    // A rule with other exceptions is another statement: "often, unless it is also seen that …".
    private static string Circumstances(IReadOnlyList<string> occasions, IReadOnlyList<string> without) =>
        $"{Conditions.Sorted(occasions)}|{Conditions.Sorted(without)}";
}
