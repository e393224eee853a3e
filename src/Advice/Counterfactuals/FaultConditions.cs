using Advice.Knowledge;

namespace Advice.Counterfactuals;

/// <summary>The conditions under which rules speak for a fault, each held against a case.</summary>
internal sealed class FaultConditions(Catalogue catalogue)
{
    private readonly ILookup<string, ShowsRule> _shows =
        catalogue.Rules.Values.OfType<ShowsRule>().OrderByDescending(rule => rule.Often).ThenBy(rule => rule.Id, StringComparer.Ordinal).ToLookup(rule => rule.Fault);

    private readonly ILookup<string, ProneRule> _prone = catalogue.Rules.Values.OfType<ProneRule>().OrderBy(rule => rule.Id, StringComparer.Ordinal)
        .SelectMany(rule => rule.Faults, (rule, fault) => (fault, rule)).ToLookup(pair => pair.fault, pair => pair.rule);

    /// <summary>Shows rules of a fault by strength.</summary>
    public IEnumerable<ShowsRule> Shows(string fault) => _shows[fault];

    /// <summary>All conditions.</summary>
    public IReadOnlyList<Condition> Of(Fault fault, Advised advised) =>
    [
        .. catalogue.FitsByFault[fault.Id].Select(rule => Fits(rule, advised.Case)),
        .. _shows[fault.Id].Select(rule => Shown(rule, advised)),
        .. _prone[fault.Id].Select(rule => Prone(rule, advised)),
    ];

    /// <summary>Whether some things exist on the vehicle.</summary>
    public static Condition Fits(FitsRule rule, Case @case)
    {
        var status = Status(rule.When.Test(@case.Vehicle));
        var text = status == ConditionStatus.Failed ? $"It exists only if {rule.OnlyIf}. {rule.Because.For(@case.Workshop.Reader)}" : $"It exists only if {rule.OnlyIf}.";
        return new Condition(rule.Id, status, text);
    }

    private Condition Shown(ShowsRule rule, Advised advised)
    {
        var (@case, audience) = (advised.Case, advised.Case.Workshop.Reader);
        var name = rule.Sign.Kind == SignKind.Code ? $"code {rule.Sign.Id}" : catalogue.Symptoms[rule.Sign.Id].Name.For(audience);
        var when = rule.Occasions.Count == 0 ? "" : $" ({string.Join(" or ", rule.Occasions.Select(id => catalogue.Occasions[id].Name))})";
        var (status, why) = Sign(rule, advised);
        return new Condition(rule.Id, status, $"It shows itself by: {name}{when}. {why} {rule.Because.For(audience)}");
    }

    private (ConditionStatus Status, string Why) Sign(ShowsRule rule, Advised advised)
    {
        var @case = advised.Case;
        if (rule.When.Test(@case.Vehicle) == Truth.No)
            return (ConditionStatus.Failed, "Not on this vehicle.");
        if (rule.Without.FirstOrDefault(other => @case.Reports.Any(report => report.Present && report.Symptom == other)) is { } ruledOut)
            return (ConditionStatus.Failed, $"It does not count beside {catalogue.Symptoms[ruledOut].Name.For(@case.Workshop.Reader)}.");
        if (advised.Evidence.Links.FirstOrDefault(link => link.Rule == rule.Id) is { } link)
            return link.Seen.Present ? (ConditionStatus.Held, "Reported.") : (ConditionStatus.Failed, "Expressly not noticed.");
        return @case.Reports.Any(report => rule.Sign == Knowledge.Sign.Symptom(report.Symptom))
            ? (ConditionStatus.Failed, "Reported, but on another occasion.")
            : (ConditionStatus.Unknown, "Nobody has spoken of it.");
    }

    private static Condition Prone(ProneRule rule, Advised advised)
    {
        var holds = advised.Evidence.Factors.Any(factor => factor.Rule.Id == rule.Id)
            || (rule.Service is null && rule.When.Test(advised.Case.Vehicle) == Truth.Yes);
        var status = holds ? ConditionStatus.Held : rule.When.Test(advised.Case.Vehicle) == Truth.No ? ConditionStatus.Failed : ConditionStatus.Unknown;
        var effect = rule.Odds > 1 ? "more" : "less";
        return new Condition(rule.Id, status, FormattableString.Invariant($"It makes it {effect} likely, by {rule.Odds} to 1. {rule.Because.For(advised.Case.Workshop.Reader)}"));
    }

    private static ConditionStatus Status(Truth truth) => truth switch
    {
        Truth.Yes => ConditionStatus.Held,
        Truth.No => ConditionStatus.Failed,
        _ => ConditionStatus.Unknown,
    };
}
