using Advice.Answers;
using Advice.Documents.Judgements;
using Advice.Evidence;
using Advice.Findings;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Rules;
using AdviceService.Requests;

namespace AdviceService.Catalogues;

/// <summary>The knowledge as callers read it, by id.</summary>
internal sealed class Entries(Catalogue catalogue, string revision, IEnumerable<SwitchedOff> off)
{
    public IReadOnlyList<SystemEntry> Systems { get; } = [.. catalogue.Systems.Select(one => new SystemEntry(one.Id, one.Name.Trade, one.Name.Plain))];

    public IReadOnlyList<SymptomEntry> Symptoms { get; } = ById(
        catalogue.Symptoms.Values, one => one.Id, one => new SymptomEntry(one.Id, one.Name.Trade, one.Name.Plain, one.Ask, one.Phrases));

    public IReadOnlyList<FaultEntry> Faults { get; } = ById(catalogue.Faults.Values, one => one.Id, one => new FaultEntry(
        one.Id, one.Name.Trade, one.Name.Plain, one.System, one.Places, one.Prior, one.Consequence.Name, one.Deficiency,
        OnlyIf(catalogue.FitsByFault[one.Id]), [.. catalogue.ChecksByFault[one.Id].Select(check => check.Id)], one.Source.ToString()));

    public IReadOnlyList<CheckEntry> Checks { get; } = ById(catalogue.Checks.Values, one => one.Id, one => Check(one, catalogue));

    public IReadOnlyList<CautionEntry> Cautions { get; } = ById(
        catalogue.Cautions.Values, one => one.Id, one => new CautionEntry(one.Id, one.Text.Trade, one.Text.Plain, one.Source.ToString()));

    public IReadOnlyList<RuleEntry> Rules { get; } = ById(catalogue.Rules.Values, one => one.Id, RuleEntries.Of);

    public RuleSetDocument RuleSet { get; } = new(
        revision, AdviceWriter.Program, catalogue.Rules.Count, catalogue.Symptoms.Count, catalogue.Faults.Count, catalogue.Checks.Count,
        catalogue.Cautions.Count, catalogue.LimitsByCheck.Sum(limits => limits.Count()), catalogue.Services.Count, catalogue.Codes.Count,
        catalogue.Overlays,
        [
            .. catalogue.OverlayEntries.Values.Concat(off.SelectMany(one => one.Entries))
                .OrderBy(entry => entry.Kind, StringComparer.Ordinal).ThenBy(entry => entry.Id, StringComparer.Ordinal).ThenBy(entry => entry.Overlay, StringComparer.Ordinal),
        ]);

    private static IReadOnlyList<TEntry> ById<T, TEntry>(IEnumerable<T> all, Func<T, string> id, Func<T, TEntry> entry) =>
        [.. all.OrderBy(id, StringComparer.Ordinal).Select(entry)];

    private static CheckEntry Check(Check check, Catalogue catalogue) => new(
        check.Id, check.Title.Trade, check.Title.Plain, check.System, check.Area.Id, check.Places, check.Minutes, check.DoneBy,
        [.. check.Needs.Select(need => need.Id)], check.Tools, check.Method, check.Measure?.Unit,
        check.Measure is { } measure ? UnitConversion.Accepted(measure.Unit) : [],
        [.. check.Observations.Select(one => new ResultDocument(one.Id, one.Text, one.Normal))],
        [.. catalogue.LimitsByCheck[check.Id].Select(limit => new LimitDocument(limit.Text.Trade, limit.Source.ToString()))],
        OnlyIf(catalogue.FitsByCheck[check.Id]), [.. check.Detects.Select(detects => detects.Fault).Distinct()], check.Cautions)
    {
        With = [.. FindingInputs.Of(check).Select(InputEntry.Of)],
    };

    private static string? OnlyIf(IEnumerable<FitsRule> fits)
    {
        var conditions = fits.Select(rule => rule.OnlyIf).Distinct().ToList();
        return conditions.Count == 0 ? null : string.Join("; ", conditions);
    }
}
