using Advice.Documents;
using Advice.Due;
using Advice.Evidence;
using Advice.Inspections;
using Advice.Judging;
using Advice.Knowledge;

namespace Advice.Answers;

/// <summary>Finds which of the entries that an overlay switches off would have had a part in an answer, by advising with the rules below it.</summary>
internal sealed class RulesBelow(SwitchedOff off)
{
    private readonly Catalogue _catalogue = off.Below.Catalogue;
    private readonly Assessment _assessment = new(off.Below);
    private readonly InspectionAssessment _inspection = new(off.Below);
    private readonly UsedEntries _used = new(off.Below.Catalogue);
    private readonly DueReckoning _due = new(off.Below.Catalogue);
    private readonly LimitChoice _limits = new(off.Below.Catalogue);

    /// <summary>Those entries.</summary>
    /// <param name="case">The case.</param>
    /// <param name="unknownCodes">Trouble codes that the set above does not know.</param>
    /// <param name="naming">What an answer of this kind names.</param>
    /// <param name="judgements">The judgements on findings.</param>
    public IEnumerable<OverlayEntry> Of(Case @case, IReadOnlyList<string> unknownCodes, Naming naming, IEnumerable<JudgementDocument> judgements)
    {
        var known = Known(@case, unknownCodes);
        var advised = naming == Naming.Inspection ? _inspection.Of(known) : naming.Of(_assessment.Of(known));
        var cautions = advised.Steps.SelectMany(step => step.Check.Cautions).Concat(advised.Cautions.Select(rule => rule.Caution));
        var used = _used.Of(advised, new(cautions, _due.Of(known).Where(naming.Names).Select(item => item.Item.Id), judgements)).ToHashSet();
        return off.Entries.Where(entry => used.Contains((entry.Kind, entry.Id)));
    }

    /// <summary>Those among the service items that the vehicle would have.</summary>
    public IEnumerable<OverlayEntry> Due(Case @case)
    {
        var items = _due.Of(@case).Select(item => item.Item.Id).ToHashSet();
        return off.Entries.Where(entry => entry.Kind == UsedEntries.ServiceItem && items.Contains(entry.Id));
    }

    /// <summary>Those among the limits that would apply to a check.</summary>
    public IEnumerable<OverlayEntry> Limits(string check, string? position, Case @case)
    {
        var limits = _catalogue.Checks.TryGetValue(check, out var below) ? _limits.For(below, position, @case).Select(limit => limit.Id).ToHashSet() : [];
        return off.Entries.Where(entry => entry.Kind == UsedEntries.Limit && limits.Contains(entry.Id));
    }

    /// <summary>The case as far as the rules below know of it: an overlay may add symptoms, codes and checks.</summary>
    private Case Known(Case @case, IReadOnlyList<string> unknownCodes) => @case with
    {
        Reports = [.. @case.Reports.Where(report => _catalogue.Symptoms.ContainsKey(report.Symptom))],
        Codes = [.. @case.Codes.Concat(unknownCodes).Where(_catalogue.Codes.ContainsKey).Order(StringComparer.Ordinal)],
        Outcomes = [.. @case.Outcomes.Where(outcome => _catalogue.Checks.ContainsKey(outcome.Check))],
        Done = @case.Done.Where(_catalogue.Checks.ContainsKey).ToHashSet(),
    };
}
