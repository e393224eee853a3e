using Advice.Knowledge.Rules;

namespace Advice.Rules.Checking;

/// <summary>Rules about the same thing under the same conditions: they say it twice, or contradict each other.</summary>
internal sealed class Repetitions(Tables tables, Problems problems)
{
    /// <summary>Finds rules that contradict each other or would count twice.</summary>
    public void Refuse()
    {
        Each<ShowsRule>(
            ErrorCode.CountsTwice,
            rule => [new(Key(rule, rule.Fault, rule.Sign.ToString(), Circumstances(rule.Occasions, rule.Without)), "")], "fault, sign, occasions and vehicles");
        Each<ProneRule>(
            ErrorCode.CountsTwice,
            rule => rule.Faults.Select(fault => new Statement(Key(rule, fault, $"{rule.Service}"), FormattableString.Invariant($"odds of {rule.Odds}"))),
            "fault, service and vehicles");
        Each<NormalRule>(
            ErrorCode.CountsTwice,
            rule => [new(Key(rule, rule.Symptom, Circumstances(rule.Occasions, rule.Without)), FormattableString.Invariant($"a share of {rule.Share}"))],
            "symptom, occasions and vehicles");
        Each<DrivingRule>(null, Driving, "trigger, occasions and vehicles");
    }

    /// <summary>Finds rules that could be left out without harm.</summary>
    public void Doubt()
    {
        Each<DrivingRule>(WarningCode.SaysAgain, Driving, "trigger, occasions and vehicles", different: false);
        Each<ImpliesRule>(WarningCode.SaysAgain, rule => [new(Key(rule, $"{rule.Sign}", $"{rule.Implied}", Circumstances(rule.Occasions, rule.Without)), "")], "signs, occasions and vehicles");
        Each<WarnsRule>(
            WarningCode.SaysAgain,
            rule => rule.Checks.DefaultIfEmpty("").Select(check => new Statement(
                Key(rule, Conditions.Sorted(rule.Symptoms), check, rule.Fault, $"{rule.Probability}", rule.Caution, Circumstances(rule.Occasions, rule.Without)), "")),
            "trigger, caution, occasions and vehicles");
    }

    private void Each<T>(string? again, Func<T, IEnumerable<Statement>> statements, string same, bool different = true)
        where T : Rule
    {
        var all = tables.Rules.Bound.OfType<T>().SelectMany(statements, (rule, statement) => (rule, statement.About, statement.Says));
        foreach (var group in all.GroupBy(one => one.About))
        {
            var (first, _, said) = group.First();
            foreach (var (rule, _, says) in group.Skip(1).DistinctBy(one => one.rule.Id))
            {
                if (says == said && again is not null)
                    problems.Add(again, tables.Rules.PlaceOf(rule.Id), $"'{rule.Id}' says again what '{first.Id}' says: same {same}; keep one");
                else if (says != said && different)
                    problems.Add(ErrorCode.Contradiction, tables.Rules.PlaceOf(rule.Id), $"'{rule.Id}' says {says} where '{first.Id}' says {said}: same {same}; keep one");
            }
        }
    }

    private static IEnumerable<Statement> Driving(DrivingRule rule) =>
    [
        new(Key(rule, Conditions.Sorted(rule.Symptoms), rule.Fault, $"{rule.Probability}", Circumstances(rule.Occasions, rule.Without)), FormatWords.Of(rule.Advice)),
    ];

    private static string Key(Rule rule, params string?[] about) => string.Join('|', [.. about, Conditions.Key(rule.When.Tests)]);

    // A rule with other exceptions is another statement: "often, unless it is also seen that …".
    private static string Circumstances(IReadOnlyList<string> occasions, IReadOnlyList<string> without) =>
        $"{Conditions.Sorted(occasions)}|{Conditions.Sorted(without)}";

    /// <summary>What a rule is about, with all its conditions, and what it says of that.</summary>
    private sealed record Statement(string About, string Says);
}
