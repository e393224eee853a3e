using Advice.Counterfactuals;
using Advice.Documents;
using Advice.Intake;
using Advice.Knowledge;

namespace Advice.Answers;

/// <summary>Puts a contrast into words.</summary>
public sealed class WhyNotWriter(Catalogue catalogue, string revision)
{
    private readonly UnderstoodWriter _understood = new(catalogue);
    private readonly RuleSetStamp _ruleSet = new(revision, catalogue.Rules.Count, catalogue.Overlays);

    /// <summary>The document on a fault.</summary>
    public WhyNotDocument Write(CaseReading reading, Advised advised, FaultInCase fault) =>
        Document(reading, advised, null, [], [fault], Summary(fault, advised.Case.Workshop.Reader));

    /// <summary>The document on a check.</summary>
    public WhyNotDocument Write(CaseReading reading, Advised advised, CheckInCase check)
    {
        var audience = advised.Case.Workshop.Reader;
        var failed = check.Conditions.FirstOrDefault(condition => condition.Status == ConditionStatus.Failed);
        var own = check.Rank is { } rank ? $"It is step {rank}." : failed is not null ? $"It is no step. {failed.Text}" : "It is no step: nothing that it finds is raised by this case.";
        var change = check.Change is { } one ? $"A yes to this question would make it step {one.Rank}: {Question(one)}"
            : check.Rank <= 3 ? null : "No single further symptom would make it one of the first three steps.";
        return Document(reading, advised, check, check.Conditions, check.Faults, string.Join(' ', [own, .. new[] { change }.OfType<string>(), .. check.Faults.Take(1).Select(fault => Summary(fault, audience))]));
    }

    private WhyNotDocument Document(
        CaseReading reading, Advised advised, CheckInCase? check, IReadOnlyList<Condition> conditions, IReadOnlyList<FaultInCase> faults, string summary) => new()
        {
            AsOf = advised.Case.AsOf,
            Program = AdviceWriter.Program,
            RuleSet = _ruleSet,
            Summary = summary,
            Understood = _understood.Write(reading, advised),
            StepRank = check?.Rank,
            Change = check?.Change is { } change ? Write(change) : null,
            Conditions = [.. conditions.Select(Write)],
            Faults = [.. faults.Select(fault => Write(fault, advised.Case.Workshop.Reader))],
        };

    private string Summary(FaultInCase fault, Audience audience)
    {
        var name = fault.Fault.Name.For(audience);
        // A factor that does not apply explains nothing.
        var missing = fault.Conditions.FirstOrDefault(condition => condition.Status == ConditionStatus.Failed && catalogue.Rules.GetValueOrDefault(condition.Rule) is not ProneRule);
        var standing = fault.Rank is { } rank
            ? FormattableString.Invariant($"{Capital(name)}: suspect number {rank}, {Math.Round(fault.Probability!.Value * 100, 1)} %.")
            : $"{Capital(name)}: not raised by this case. {missing?.Text ?? "Nothing that it shows is reported."}";
        var change = fault.Change is { } one ? $" A yes to this question would bring it to place {one.Rank}: {Question(one)}"
            : fault.Rank <= 3 ? "" : " No single further symptom would bring it among the first three.";
        return standing + change;
    }

    private WhyNotFault Write(FaultInCase fault, Audience audience) => new(
        fault.Fault.Id, fault.Fault.Name.For(audience), fault.Rank, fault.Probability is { } probability ? SuspectWriter.Rounded(probability) : null,
        [.. fault.Conditions.Select(Write)],
        fault.Change is { } change ? Write(change) : null,
        [.. fault.LookAt.Select(check => new LookAtDocument(check.Id, check.Title.For(audience), check.Minutes))]);

    private ChangeDocument Write(Change change) =>
        new(change.Symptom.Id, change.Occasions, Question(change), change.Rank, SuspectWriter.Rounded(change.Probability));

    /// <summary>The question that asks for exactly what was tried.</summary>
    private string Question(Change change) => change.Occasions.Count == 0
        ? change.Symptom.Ask
        : $"{change.Symptom.Ask} ({string.Join(" or ", change.Occasions.Select(id => catalogue.Occasions[id].Name))})";

    private static ConditionDocument Write(Condition condition) => new(condition.Rule, condition.Status, condition.Text);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
