using Advice.Counterfactuals;
using Advice.Documents;
using Advice.Documents.Counterfactuals;
using Advice.Evidence;
using Advice.Intake;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Words;

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
        var own = check.Rank is { } rank ? Say(audience, Sentences.IsStep, rank)
            : Say(audience, failed is not null ? Sentences.IsNoStep : check.Before.Count > 0 ? Sentences.MinutesGoElsewhere : Sentences.FindsNothingHere);
        var before = check.Before.Count == 0 ? null
            : Say(audience, Sentences.StepsBefore, string.Join("; ", check.Before.Select(step => Say(audience, Sentences.StepOfRank, step.Check.Title.For(audience), step.Rank))));
        var change = check.Changes is [var one, ..] ? Say(audience, Sentences.WouldBeStep, Changed(one, audience), one.Rank, Text(one, audience))
            : check.Rank <= WhyNot.Front || failed is not null ? null : Say(audience, Sentences.NoChangeToStep);
        // Where the check makes no sense, neither do its faults.
        var wrong = Wrong(failed, audience);
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
            ? Say(audience, Sentences.SuspectNumber, Capital(name), rank, Math.Round(fault.Probability!.Value * 100, 1))
            : Say(audience, Sentences.NotRaised, Capital(name), missing?.Text ?? Say(audience, Sentences.NothingReported));
        var change = fault.Changes is [var one, ..] ? Say(audience, Sentences.WouldBePlace, Changed(one, audience), one.Rank, Text(one, audience))
            : fault.Rank <= WhyNot.Front ? null
            : Wrong(missing, audience) ?? Say(audience, Sentences.NoChangeToSuspect);
        return change is null ? standing : $"{standing} {change}";
    }

    /// <summary>Whether a condition says why a fault was not raised. A factor that does not apply explains nothing, nor does what other vehicles show.</summary>
    private bool Explains(Condition condition) => condition.Status == ConditionStatus.Failed
        && (Rule(condition) is FitsRule || (Rule(condition) is ShowsRule && !condition.Parts.Any(part => part is { Kind: ConditionKind.Fact, Status: ConditionStatus.Failed })));

    /// <summary>The facts that rule something out; null where none does.</summary>
    private string? Wrong(Condition? failed, Audience audience) => failed is not null && Rule(failed) is FitsRule
        ? Say(audience, Sentences.StatedWrongly, string.Join("; ", failed.Parts.Where(part => part.Status == ConditionStatus.Failed).Select(part => part.Text)))
        : null;

    private Rule? Rule(Condition condition) => rules.Catalogue.Rules.GetValueOrDefault(condition.Rule);

    private static WhyNotFault Write(FaultInCase fault, Audience audience) => new(
        fault.Fault.Id, fault.Fault.Name.For(audience), fault.Rank, fault.Probability is { } probability ? SuspectWriter.Rounded(probability) : null,
        [.. fault.Conditions.Select(Write)],
        [.. fault.Changes.Select(Write)],
        [.. fault.LookAt.Select(check => new LookAtDocument(check.Id, check.Title.For(audience), check.Minutes))]);

    private string Changed(Counterfactual one, Audience audience) => Say(audience, one.Changes switch
    {
        [{ Kind: ChangeKind.Symptom }] => Sentences.YesToThis,
        [{ Kind: ChangeKind.Fact }] => Sentences.ToKnowThis,
        [_] => Sentences.This,
        _ => Sentences.BothOfThese,
    });

    private string Text(Counterfactual one, Audience audience) =>
        Capital(one.Changes.Select(change => Ended(change.Text)).Aggregate((first, second) => Say(audience, Sentences.Also, first, second)));

    private string Say(Audience audience, Sentence sentence, params ReadOnlySpan<object?> slots) => rules.Catalogue.Say(audience, sentence, slots);

    private static string Ended(string text) => text[^1] is '.' or '?' or ')' ? text : $"{text}.";

    private static ChangeDocument Write(Counterfactual one) => new(
        [.. one.Changes.Select(change => new ChangePartDocument(change.Kind, change.Id, change.Text, change.At, change.Value.DeepClone()))], one.Rank, SuspectWriter.Rounded(one.Probability));

    private static ConditionDocument Write(Condition condition) => new(
        condition.Rule, condition.Status, condition.Text, [.. condition.Parts.Select(part => new ConditionPartDocument(part.Kind, part.Id, part.Status, part.Text))]);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
