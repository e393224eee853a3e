using Advice.Knowledge.Rules;

namespace Advice.Rules.Checking.Doubts;

/// <summary>Rules that another one swallows: it applies wherever they do and says as much or more.</summary>
internal sealed class SwallowedRules(Tables tables, Problems doubts)
{
    private readonly Existence _existence = new(tables);

    /// <summary>Checks links and driving advice: of several links the strongest counts, of several advices the strictest (of those as strict each tells its reason).</summary>
    public void Check()
    {
        foreach (var group in tables.Rules.Bound.OfType<ShowsRule>().GroupBy(rule => (rule.Fault, rule.Sign)))
            Each([.. group], Swallows, "adds no more than its reason");
        Each([.. tables.Rules.Bound.OfType<DrivingRule>()], Swallows, "never decides");
    }

    private void Each<T>(IReadOnlyList<T> rules, Func<T, T, bool> swallows, string does)
        where T : Rule
    {
        foreach (var rule in rules)
        {
            if (rules.FirstOrDefault(other => other != rule && swallows(other, rule)) is { } other)
                doubts.Add(WarningCode.SwallowedRule, tables.Rules.PlaceOf(rule.Id), $"'{rule.Id}' {does}: '{other.Id}' applies wherever it does and says as much or more");
        }
    }

    private bool Swallows(ShowsRule wide, ShowsRule narrow) =>
        wide.Often >= narrow.Often && AreWithin(narrow.Occasions, wide.Occasions) && wide.Without.All(narrow.Without.Contains)
        && Conditions.AreWithin([.. narrow.When.Tests, .. _existence.OfFault(narrow.Fault)], wide.When.Tests);

    // The first symptom alone is asked for an occasion, so that rules about several symptoms compare only without one.
    private bool Swallows(DrivingRule wide, DrivingRule narrow) =>
        wide.Advice > narrow.Advice && wide.Fault == narrow.Fault && wide.Probability <= narrow.Probability
        && wide.Symptoms.All(narrow.Symptoms.Contains)
        && (wide.Occasions.Count == 0 || (wide.Symptoms.SequenceEqual(narrow.Symptoms) && AreWithin(narrow.Occasions, wide.Occasions)))
        && wide.Without.All(narrow.Without.Contains) && Conditions.AreWithin(narrow.When.Tests, wide.When.Tests);

    private bool AreWithin(IReadOnlyList<string> narrow, IReadOnlyList<string> wide) =>
        wide.Count == 0 || (narrow.Count > 0 && narrow.All(one => wide.Any(other => IsWithin(one, other))));

    private bool IsWithin(string? narrow, string wide)
    {
        for (; narrow is not null; narrow = tables.Occasions.TryGet(narrow, out var occasion) ? occasion.Within : null)
        {
            if (narrow == wide)
                return true;
        }

        return false;
    }
}
