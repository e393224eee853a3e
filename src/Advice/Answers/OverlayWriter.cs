using Advice.Documents;
using Advice.Due;
using Advice.Judging;
using Advice.Knowledge;

namespace Advice.Answers;

/// <summary>Names the entries of overlays that had a part in an answer.</summary>
internal sealed class OverlayWriter(Catalogue catalogue)
{
    private readonly LimitChoice _limits = new(catalogue);

    /// <summary>Those entries, by kind and id.</summary>
    public IReadOnlyList<OverlayEntry> Write(Advised advised, IReadOnlyList<CautionDocument> cautions, IReadOnlyList<DueItem> due)
    {
        if (catalogue.OverlayEntries.Count == 0)
            return [];
        var steps = advised.Steps.Select(step => step.Check).ToList();
        var used = Rules(advised).Select(id => ("rule", id))
            .Concat(advised.Suspicion.Raised.Select(suspect => ("fault", suspect.Instance.Fault.Id)))
            .Concat(advised.Case.Reports.Select(report => ("symptom", report.Symptom)))
            .Concat(steps.Select(check => ("check", check.Id)))
            .Concat(steps.SelectMany(check => check.Needs, (_, need) => ("set-up", need.Id)))
            .Concat(Limits(steps, advised.Case).Select(limit => ("limit", limit.Id)))
            .Concat(cautions.Select(caution => ("caution", caution.Id)))
            .Concat(due.Select(item => ("service item", item.Item.Id)));
        return
        [
            .. used.Distinct().Select(entry => catalogue.OverlayEntries.GetValueOrDefault(entry)).OfType<OverlayEntry>()
                .OrderBy(entry => entry.Kind, StringComparer.Ordinal).ThenBy(entry => entry.Id, StringComparer.Ordinal),
        ];
    }

    private IEnumerable<string> Rules(Advised advised) =>
        advised.Evidence.Links.Select(link => link.Rule)
            .Concat(advised.Evidence.Factors.Select(factor => factor.Rule.Id))
            .Concat(advised.Evidence.Implied.Select(implied => implied.Rule.Id))
            .Concat(advised.Evidence.Normals.Select(normal => normal.Rule.Id))
            .Concat(advised.Driving.Select(rule => rule.Id))
            .Concat(advised.Cautions.Select(rule => rule.Id))
            .Concat(advised.Suspicion.Raised.SelectMany(suspect => catalogue.FitsByFault[suspect.Instance.Fault.Id]).Select(rule => rule.Id))
            .Concat(advised.Steps.SelectMany(step => catalogue.FitsByCheck[step.Check.Id]).Select(rule => rule.Id));

    /// <summary>The limits that steps state and findings were held against.</summary>
    private IEnumerable<Limit> Limits(IEnumerable<Check> steps, Case @case) =>
        steps.Concat(@case.Outcomes.Select(outcome => catalogue.Checks[outcome.Check]))
            .SelectMany(check => _limits.For(check, position: null, @case));
}
