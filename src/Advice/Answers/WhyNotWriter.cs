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
        return Document(reading, advised, check.Rank, check.Conditions, check.Faults, string.Join(' ', [own, .. check.Faults.Take(1).Select(fault => Summary(fault, audience))]));
    }

    private WhyNotDocument Document(
        CaseReading reading, Advised advised, int? stepRank, IReadOnlyList<Condition> conditions, IReadOnlyList<FaultInCase> faults, string summary) => new()
        {
            AsOf = advised.Case.AsOf,
            Program = AdviceWriter.Program,
            RuleSet = _ruleSet,
            Summary = summary,
            Understood = _understood.Write(reading, advised),
            StepRank = stepRank,
            Conditions = [.. conditions.Select(Write)],
            Faults = [.. faults.Select(fault => Write(fault, advised.Case.Workshop.Reader))],
        };

    private static string Summary(FaultInCase fault, Audience audience)
    {
        var name = fault.Fault.Name.For(audience);
        var missing = fault.Conditions.FirstOrDefault(condition => condition.Status == ConditionStatus.Failed);
        var standing = fault.Rank is { } rank
            ? FormattableString.Invariant($"{Capital(name)}: suspect number {rank}, {Math.Round(fault.Probability!.Value * 100, 1)} %.")
            : $"{Capital(name)}: not raised by this case. {missing?.Text ?? "Nothing that it shows is reported."}";
        var change = fault.Change is { } one ? $" A yes to this question would bring it to place {one.Rank}: {one.Symptom.Ask}"
            : fault.Rank <= 3 ? "" : " No single further symptom would bring it among the first three.";
        return standing + change;
    }

    private static WhyNotFault Write(FaultInCase fault, Audience audience) => new(
        fault.Fault.Id, fault.Fault.Name.For(audience), fault.Rank, fault.Probability is { } probability ? SuspectWriter.Rounded(probability) : null,
        [.. fault.Conditions.Select(Write)],
        fault.Change is { } change ? new ChangeDocument(change.Symptom.Id, change.Symptom.Ask, change.Rank, SuspectWriter.Rounded(change.Probability)) : null,
        [.. fault.LookAt.Select(check => new LookAtDocument(check.Id, check.Title.For(audience), check.Minutes))]);

    private static ConditionDocument Write(Condition condition) => new(condition.Rule, condition.Status, condition.Text);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
