using Advice.Knowledge;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;
using Advice.Rules.Checking;

namespace Advice.Rules.Overlays;

/// <summary>Warns of whatever overlays take away or change that protects people: it must never happen unseen.</summary>
internal static class ProtectionLost
{
    private static readonly string[] Protecting = ["cautions", "warns", "driving", "limits", "wordings"];

    /// <summary>The warnings.</summary>
    /// <param name="shipped">The shipped set.</param>
    /// <param name="laid">Tables of the set with its overlays.</param>
    /// <param name="manifests">The manifests of the overlays.</param>
    public static IReadOnlyList<RuleFileError> Of(Catalogue shipped, Tables laid, IReadOnlyList<OverlayManifest> manifests)
    {
        var problems = new Problems();
        foreach (var mark in manifests.SelectMany(manifest => manifest.Off).Where(Protects))
            problems.Add(WarningCode.CautionChanged, mark.Place, $"'{mark.Id}' under '{mark.Kind}' protects people and is switched off: {mark.Because}");
        foreach (var mark in manifests.SelectMany(manifest => manifest.Replaces).Where(mark => mark.Kind != "limits" && Protects(mark)))
            problems.Add(WarningCode.CautionChanged, mark.Place, $"'{mark.Id}' under '{mark.Kind}' protects people and is replaced; see that it still warns of the same");
        foreach (var check in laid.Checks.Bound)
        {
            // A set-up brings its cautions, so that replacing one can take them from checks that no overlay names.
            var lost = shipped.Checks.TryGetValue(check.Id, out var was) ? was.Cautions.Except(check.Cautions).ToList() : [];
            if (lost.Count > 0)
                problems.Add(WarningCode.CautionChanged, laid.Checks.PlaceOf(check.Id), $"the check '{check.Id}' no longer carries {string.Join(", ", lost.Select(id => $"'{id}'"))}");
        }

        foreach (var limit in laid.Limits.Bound)
        {
            if (shipped.LimitsByCheck[limit.Check].FirstOrDefault(was => was.Id == limit.Id) is { } was && IsLaxer(limit, was))
                problems.Add(WarningCode.CautionChanged, laid.Limits.PlaceOf(limit.Id), $"the limit '{limit.Id}' passes what the one in its place did not");
        }

        return problems.InOrder;
    }

    private static bool Protects(OverlayMark mark) =>
        Protecting.Contains(mark.Kind) && (mark.Kind != "wordings" || (Sentences.All.TryGetValue(mark.Id, out var sentence) && sentence.Protects));

    private static bool IsLaxer(Limit limit, Limit was) =>
        limit.Unit != was.Unit || limit.Deficiency < was.Deficiency || (limit.Jurisdiction is not null && limit.Jurisdiction != was.Jurisdiction)
        || (limit.Minimum ?? double.MinValue) < (was.Minimum ?? double.MinValue) || (limit.Maximum ?? double.MaxValue) > (was.Maximum ?? double.MaxValue);
}
