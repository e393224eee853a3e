using Advice.Documents.Judgements;
using Advice.Documents.Requests;
using Advice.Due;
using Advice.Evidence;
using Advice.Intake;
using Advice.Judging;
using Advice.Knowledge;

namespace Advice.Answers;

/// <summary>Names the entries of overlays that had a part in an answer, and those switched off that would have had one.</summary>
internal sealed class OverlayWriter(IRuleBook rules)
{
    private readonly UsedEntries _used = new(rules.Catalogue);
    private readonly LimitChoice _limits = new(rules.Catalogue);
    private readonly IReadOnlyList<RulesBelow> _below = [.. rules.SwitchedOff.Select(off => new RulesBelow(off))];

    /// <summary>Those entries, by kind and id.</summary>
    /// <param name="naming">What an answer of this kind names.</param>
    /// <param name="reading">How the request was read.</param>
    /// <param name="advised">What was concluded.</param>
    /// <param name="named">What the answer names beside that.</param>
    public IReadOnlyList<OverlayEntry> Write(Naming naming, CaseReading reading, Advised advised, NamedEntries named)
    {
        if (rules.Catalogue.Overlays.Count == 0)
            return [];
        var used = Own(_used.Of(naming.Of(advised), named));
        return InOrder(used.Concat(_below.SelectMany(below => below.Of(reading, naming, named.Judgements))));
    }

    /// <summary>The service items of overlays among all that a vehicle has, and those switched off that it would have.</summary>
    public IReadOnlyList<OverlayEntry> Write(Case @case, IEnumerable<DueItem> due) => rules.Catalogue.Overlays.Count == 0 ? [] : InOrder(
        Own(due.Select(item => (UsedEntries.ServiceItem, item.Item.Id))).Concat(_below.SelectMany(below => below.Due(@case))));

    /// <summary>The check and limits of overlays by which wear is projected, and the limits switched off that would have applied.</summary>
    public IReadOnlyList<OverlayEntry> Write(ProjectionRequest request, Case @case)
    {
        if (rules.Catalogue.Overlays.Count == 0)
            return [];
        var check = Own([(UsedEntries.Check, request.Check)]);
        return InOrder(request.Limit is not null ? check : check
            .Concat(Own(_limits.For(rules.Catalogue.Checks[request.Check], request.Position, @case).Select(limit => (UsedEntries.Limit, limit.Id))))
            .Concat(_below.SelectMany(below => below.Limits(request.Check, request.Position, @case))));
    }

    /// <summary>The meanings of overlays among those of a verdict, and those switched off that it would have had.</summary>
    public IReadOnlyList<OverlayEntry> Write(ComputationDocument computed) => rules.Catalogue.Overlays.Count == 0 ? [] : InOrder(
        Own(_used.MeaningsOf(computed).Select(meaning => (UsedEntries.Meaning, meaning.Id))).Concat(_below.SelectMany(below => below.Meanings(computed))));

    private IEnumerable<OverlayEntry> Own(IEnumerable<(string Kind, string Id)> used) =>
        used.Distinct().Select(entry => rules.Catalogue.OverlayEntries.GetValueOrDefault(entry)).OfType<OverlayEntry>();

    private static IReadOnlyList<OverlayEntry> InOrder(IEnumerable<OverlayEntry> entries) =>
        [.. entries.OrderBy(entry => entry.Kind, StringComparer.Ordinal).ThenBy(entry => entry.Id, StringComparer.Ordinal).ThenBy(entry => entry.Overlay, StringComparer.Ordinal)];
}
