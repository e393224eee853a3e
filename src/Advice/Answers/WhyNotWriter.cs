using Advice.Counterfactuals;
using Advice.Documents;
using Advice.Evidence;
using Advice.Intake;
using Advice.Knowledge;

namespace Advice.Answers;

/// <summary>Puts a contrast into words.</summary>
internal sealed class WhyNotWriter(IRuleBook rules, OverlayWriter overlays)
{
    private readonly UnderstoodWriter _understood = new(rules.Catalogue);
    private readonly RuleSetStamp _ruleSet = new(rules.Revision, rules.Catalogue.Rules.Count, rules.Catalogue.Overlays);

    /// <summary>The document on a fault.</summary>
    public WhyNotDocument Write(CaseReading reading, Advised advised, FaultInCase fault) =>
        Document(reading, advised, null, [], [fault], Summary(fault, advised.Case.Workshop.Reader));

    /// <summary>The document on a check.</summary>
    public WhyNotDocument Write(CaseReading reading, Advised advised, CheckInCase check)
    {
        var audience = advised.Case.Workshop.Reader;
        var failed = check.Conditions.FirstOrDefault(condition => condition.Status == ConditionStatus.Failed);
        var own = check.Rank is { } rank ? $"It is step {rank}." : failed is not null ? $"It is no step. {failed.Text}" : "It is no step: nothing that it finds is raised by this case.";
        var change = check.Changes is [var one, ..] ? $"{Changed(one)} would make it step {one.Rank}: {Text(one)}"
            : check.Rank <= 3 ? null : "We found no small change that would make it one of the first three steps.";
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
            Changes = [.. (check?.Changes ?? []).Select(Write)],
            Conditions = [.. conditions.Select(Write)],
            Faults = [.. faults.Select(fault => Write(fault, advised.Case.Workshop.Reader))],
            FromOverlays = overlays.Write(Naming.Suspects, advised, reading.UnknownCodes, [], []),
        };

    private string Summary(FaultInCase fault, Audience audience)
    {
        var name = fault.Fault.Name.For(audience);
        // A factor that does not apply explains nothing.
        var missing = fault.Conditions.FirstOrDefault(condition => condition.Status == ConditionStatus.Failed && rules.Catalogue.Rules.GetValueOrDefault(condition.Rule) is not ProneRule);
        var standing = fault.Rank is { } rank
            ? FormattableString.Invariant($"{Capital(name)}: suspect number {rank}, {Math.Round(fault.Probability!.Value * 100, 1)} %.")
            : $"{Capital(name)}: not raised by this case. {missing?.Text ?? "Nothing that it shows is reported."}";
        var change = fault.Changes is [var one, ..] ? $" {Changed(one)} would bring it to place {one.Rank}: {Text(one)}"
            : fault.Rank <= 3 ? "" : " We found no small change that would bring it among the first three.";
        return standing + change;
    }

    private static WhyNotFault Write(FaultInCase fault, Audience audience) => new(
        fault.Fault.Id, fault.Fault.Name.For(audience), fault.Rank, fault.Probability is { } probability ? SuspectWriter.Rounded(probability) : null,
        [.. fault.Conditions.Select(Write)],
        [.. fault.Changes.Select(Write)],
        [.. fault.LookAt.Select(check => new LookAtDocument(check.Id, check.Title.For(audience), check.Minutes))]);

    private static string Changed(Counterfactual one) => one.Changes switch
    {
        [{ Kind: ChangeKind.Symptom }] => "A yes to this question",
        [{ Kind: ChangeKind.Fact }] => "To know this",
        [_] => "This",
        _ => "Both of these",
    };

    private static string Text(Counterfactual one)
    {
        var text = string.Join(" Also: ", one.Changes.Select(change => Sentence(change.Text)));
        return Capital(text);
    }

    private static string Sentence(string text) => text[^1] is '.' or '?' or ')' ? text : $"{text}.";

    private static ChangeDocument Write(Counterfactual one) => new(
        [.. one.Changes.Select(change => new ChangePartDocument(change.Kind, change.Id, change.Text, change.At, change.Value.DeepClone()))], one.Rank, SuspectWriter.Rounded(one.Probability));

    private static ConditionDocument Write(Condition condition) => new(
        condition.Rule, condition.Status, condition.Text, [.. condition.Parts.Select(part => new ConditionPartDocument(part.Kind, part.Id, part.Status, part.Text))]);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
