using Advice.Documents.Judgements;
using Advice.Documents.Requests;
using Advice.Due;
using Advice.Evidence;
using Advice.Inspections;
using Advice.Intake;
using Advice.Judging;
using Advice.Knowledge;
using Advice.Symptoms;

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

    // Only a text can speak of what the set above has no words for; without such words it need not be read again.
    private readonly CaseReader? _texts = off.Entries.Any(entry => entry.Kind is UsedEntries.Symptom or UsedEntries.Occasion or UsedEntries.ServiceItem) ? new(off.Below.Catalogue) : null;
    private readonly HashSet<(string Kind, string Id)> _off = [.. off.Entries.Select(entry => (entry.Kind, entry.Id))];

    /// <summary>Those entries.</summary>
    /// <param name="reading">How the request was read with the rules above.</param>
    /// <param name="naming">What an answer of this kind names.</param>
    /// <param name="judgements">The judgements on findings.</param>
    public IEnumerable<OverlayEntry> Of(CaseReading reading, Naming naming, IEnumerable<JudgementDocument> judgements)
    {
        var text = _texts?.Read(new AdviceRequest { Vehicle = reading.Request.Vehicle, Complaint = reading.Request.Complaint }, reading.Case.AsOf);
        var known = Known(reading, text?.Case);
        var advised = naming == Naming.Inspection ? _inspection.Of(known) : naming.Of(_assessment.Of(known));
        var cautions = advised.Steps.SelectMany(step => step.Check.Cautions).Concat(advised.Cautions.Select(rule => rule.Caution));
        var services = _due.Of(known).Where(naming.Names).Select(item => item.Item.Id)
            .Concat(naming.Heard && text is not null ? text.Complaint.Services.Select(heard => heard.Item).OfType<string>() : []);
        var used = _used.Of(advised, new(cautions, services, judgements)).ToHashSet();
        return off.Entries.Where(entry => used.Contains((entry.Kind, entry.Id)));
    }

    /// <summary>Those among the service items that the vehicle would have.</summary>
    public IEnumerable<OverlayEntry> Due(Case @case)
    {
        var items = _due.Of(Known(@case)).Select(item => item.Item.Id).ToHashSet();
        return off.Entries.Where(entry => entry.Kind == UsedEntries.ServiceItem && items.Contains(entry.Id));
    }

    /// <summary>Those among the limits that would apply to a check.</summary>
    public IEnumerable<OverlayEntry> Limits(string check, string? position, Case @case)
    {
        var limits = _catalogue.Checks.TryGetValue(check, out var below) ? _limits.For(below, Known(position), Known(@case)).Select(limit => limit.Id).ToHashSet() : [];
        return off.Entries.Where(entry => entry.Kind == UsedEntries.Limit && limits.Contains(entry.Id));
    }

    /// <summary>Those among the meanings that the verdict of a computation would have.</summary>
    public IEnumerable<OverlayEntry> Meanings(ComputationDocument computed)
    {
        var meanings = _used.MeaningsOf(computed).Select(meaning => meaning.Id).ToHashSet();
        return off.Entries.Where(entry => entry.Kind == UsedEntries.Meaning && meanings.Contains(entry.Id));
    }

    /// <summary>The case as it is for the rules below, with what its text says in words that are switched off.</summary>
    /// <param name="reading">How the request was read with the rules above.</param>
    /// <param name="text">What its text says in the words below.</param>
    private Case Known(CaseReading reading, Case? text)
    {
        var known = Known(reading.Case);
        return known with
        {
            Reports = [.. known.Reports, .. text?.Reports.Where(NamesWhatIsOff) ?? []],
            Codes = [.. known.Codes.Concat(reading.UnknownCodes.Where(_catalogue.Codes.ContainsKey)).Order(StringComparer.Ordinal)],
            Services = known.Services.Concat(text?.Services.Where(done => _off.Contains((UsedEntries.ServiceItem, done.Key))) ?? []).ToDictionary(),
        };
    }

    /// <summary>The case as far as the rules below know of it: an overlay may add words, codes and checks.</summary>
    private Case Known(Case @case) => @case with
    {
        Jurisdiction = @case.Jurisdiction is { } law && _catalogue.Jurisdictions.ContainsKey(law) ? law : null,
        Reports = [.. @case.Reports.Where(report => _catalogue.Symptoms.ContainsKey(report.Symptom)).Select(Known)],
        Codes = [.. @case.Codes.Where(_catalogue.Codes.ContainsKey)],
        Outcomes = [.. @case.Outcomes.Where(outcome => _catalogue.Checks.ContainsKey(outcome.Check)).Select(outcome => outcome with { Position = Known(outcome.Position) })],
        Done = @case.Done.Where(_catalogue.Checks.ContainsKey).ToHashSet(),
    };

    private Report Known(Report report) =>
        report with { Occasions = [.. report.Occasions.Where(_catalogue.Occasions.ContainsKey)], Position = Known(report.Position) };

    private string? Known(string? position) => position is not null && _catalogue.Positions.ContainsKey(position) ? position : null;

    private bool NamesWhatIsOff(Report report) =>
        _off.Contains((UsedEntries.Symptom, report.Symptom)) || report.Occasions.Any(occasion => _off.Contains((UsedEntries.Occasion, occasion)));
}
