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
    private readonly RuleSetStamp _ruleSet = RuleSetStamp.Of(rules);

    /// <summary>The document on a fault.</summary>
    public WhyNotDocument Write(CaseReading reading, Advised advised, FaultInCase fault) =>
        Document(reading, advised, null, [], [fault], Summary(fault, advised.Case.Workshop.Reader));

    /// <summary>The document on a check.</summary>
    public WhyNotDocument Write(CaseReading reading, Advised advised, CheckInCase check)
    {
        var audience = advised.Case.Workshop.Reader;
        var failed = check.Conditions.FirstOrDefault(condition => condition.Status == ConditionStatus.Failed);
        var own = check.Rank is { } rank ? $"It is step {rank}."
            : failed is not null ? "It is no step."
            : check.Before.Count > 0 ? "It is no step: the minutes go to what finds more in them."
            : "It is no step: nothing that it finds is raised by this case.";
        var before = check.Before.Count == 0 ? null : $"Before it the same is looked for by: {string.Join("; ", check.Before.Select(step => $"{step.Check.Title.For(audience)} (step {step.Rank})"))}.";
        var change = check.Changes is [var one, ..] ? $"{Changed(one)} would make it step {one.Rank}: {Text(one)}"
            : check.Rank <= 3 || failed is not null ? null : "We found no small change that would make it one of the first three steps.";
        // Where the check makes no sense, neither do its faults.
        var wrong = Wrong(failed);
        var faults = wrong is null ? check.Faults.Take(1).Select(fault => Summary(fault, audience)) : [wrong];
        return Document(reading, advised, check, check.Conditions, check.Faults, string.Join(' ', [own, .. new[] { failed?.Text, before, change }.OfType<string>(), .. faults]));
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
            Before = [.. (check?.Before ?? []).Select(step => new StepBeforeDocument(step.Rank, step.Check.Id, step.Check.Title.For(advised.Case.Workshop.Reader), [.. step.Faults.Select(fault => fault.Id)]))],
            Changes = [.. (check?.Changes ?? []).Select(Write)],
            Conditions = [.. conditions.Select(Write)],
            Faults = [.. faults.Select(fault => Write(fault, advised.Case.Workshop.Reader))],
            FromOverlays = overlays.Write(Naming.Suspects, reading, advised, NamedEntries.None),
        };

    private string Summary(FaultInCase fault, Audience audience)
    {
        var name = fault.Fault.Name.For(audience);
        var missing = fault.Conditions.FirstOrDefault(Explains);
        var standing = fault.Rank is { } rank
            ? FormattableString.Invariant($"{Capital(name)}: suspect number {rank}, {Math.Round(fault.Probability!.Value * 100, 1)} %.")
            : $"{Capital(name)}: not raised by this case. {missing?.Text ?? "Nothing that it shows is reported."}";
        var wrong = Wrong(missing);
        var change = fault.Changes is [var one, ..] ? $" {Changed(one)} would bring it to place {one.Rank}: {Text(one)}"
            : fault.Rank <= 3 ? ""
            : wrong is not null ? $" {wrong}"
            : " We found no small change that would bring it among the first three.";
        return standing + change;
    }

    /// <summary>Whether a condition says why a fault was not raised. A factor that does not apply explains nothing, nor does what other vehicles show.</summary>
    private bool Explains(Condition condition) => condition.Status == ConditionStatus.Failed
        && (Rule(condition) is FitsRule || (Rule(condition) is ShowsRule && !condition.Parts.Any(part => part is { Kind: ConditionKind.Fact, Status: ConditionStatus.Failed })));

    /// <summary>The facts that rule something out; null where none does.</summary>
    private string? Wrong(Condition? failed) => failed is not null && Rule(failed) is FitsRule
        ? $"Only this, if it was stated wrongly, would change that: {string.Join("; ", failed.Parts.Where(part => part.Status == ConditionStatus.Failed).Select(part => part.Text))}."
        : null;

    private Rule? Rule(Condition condition) => rules.Catalogue.Rules.GetValueOrDefault(condition.Rule);

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
