using Advice.Due;
using Advice.Evidence;
using Advice.Knowledge;

namespace Advice.Answers;

/// <summary>Names the entries of overlays that had a part in an answer, and those switched off that would have had one.</summary>
internal sealed class OverlayWriter(IRuleBook rules)
{
    private readonly UsedEntries _used = new(rules.Catalogue);
    private readonly IReadOnlyList<RulesBelow> _below = [.. rules.SwitchedOff.Select(off => new RulesBelow(off))];

    /// <summary>Those entries, by kind and id.</summary>
    /// <param name="naming">What an answer of this kind names.</param>
    /// <param name="advised">What was concluded.</param>
    /// <param name="unknownCodes">Trouble codes that the set does not know.</param>
    /// <param name="cautions">Ids of the cautions that the answer gives.</param>
    /// <param name="due">The service items that it names.</param>
    public IReadOnlyList<OverlayEntry> Write(
        Naming naming, Advised advised, IReadOnlyList<string> unknownCodes, IEnumerable<string> cautions, IEnumerable<DueItem> due)
    {
        if (rules.Catalogue.Overlays.Count == 0)
            return [];
        var used = _used.Of(naming.Of(advised), cautions, due).Distinct()
            .Select(entry => rules.Catalogue.OverlayEntries.GetValueOrDefault(entry)).OfType<OverlayEntry>();
        return InOrder(used.Concat(_below.SelectMany(below => below.Of(advised.Case, unknownCodes, naming))));
    }

    /// <summary>The service items of overlays among all that a vehicle has, and those switched off that it would have.</summary>
    public IReadOnlyList<OverlayEntry> Write(Case @case, IEnumerable<DueItem> due) => rules.Catalogue.Overlays.Count == 0 ? [] : InOrder(
        due.Select(item => rules.Catalogue.OverlayEntries.GetValueOrDefault((UsedEntries.ServiceItem, item.Item.Id))).OfType<OverlayEntry>()
            .Concat(_below.SelectMany(below => below.Due(@case))));

    private static IReadOnlyList<OverlayEntry> InOrder(IEnumerable<OverlayEntry> entries) =>
        [.. entries.OrderBy(entry => entry.Kind, StringComparer.Ordinal).ThenBy(entry => entry.Id, StringComparer.Ordinal).ThenBy(entry => entry.Overlay, StringComparer.Ordinal)];
}
