using Advice.Documents.Requests;

namespace Advice.Counterfactuals;

/// <summary>Looks for the smallest changes of a request that bring something to the front, by really assessing each changed request.</summary>
/// <param name="assess">Assesses a request.</param>
internal sealed class ChangeSearch(Func<AdviceRequest, Advised> assess)
{
    private const int MostFirst = 4;

    private const int MostPaired = 16;

    /// <summary>Of each kind of change the one that helps most, the least first; where none alone does, the two that do together.</summary>
    /// <param name="request">The request.</param>
    /// <param name="changes">Changes that may help.</param>
    /// <param name="standing">The rank that counts in a changed case, and the probability of the fault.</param>
    public IReadOnlyList<Counterfactual> Find(AdviceRequest request, IEnumerable<Change> changes, Func<Advised, (int? Rank, double Probability)> standing)
    {
        var singles = changes.DistinctBy(change => (change.At, change.Value.ToJsonString())).Select(change => (Change: change, Stands: standing(assess(change.Make(request))))).ToList();
        var alone = singles.Select(one => Front([one.Change], one.Stands)).OfType<Counterfactual>().GroupBy(one => one.Changes[0].Kind).OrderBy(kind => kind.Key)
            .Select(kind => Best(kind)!).ToList();
        if (alone.Count > 0)
            return alone;
        var helpful = singles.Where(one => one.Stands.Rank is not null).OrderBy(one => one.Stands.Rank).ThenByDescending(one => one.Stands.Probability)
            .ThenBy(one => one.Change.Id, StringComparer.Ordinal).Select(one => one.Change).ToList();
        var together = from first in helpful.Take(MostFirst)
                       from second in helpful.Concat(singles.Select(one => one.Change).Where(change => change.Kind == ChangeKind.Fact)).Distinct().Take(MostPaired)
                       where first.At != second.At || (first.At.EndsWith('-') && first.Id != second.Id)
                       select Front([first, second], standing(assess(second.Make(first.Make(request)))));
        return Best(together.OfType<Counterfactual>()) is { } pair ? [pair] : [];
    }

    private static Counterfactual? Front(IReadOnlyList<Change> changes, (int? Rank, double Probability) stands) =>
        stands.Rank is { } rank and <= WhyNot.Front ? new Counterfactual(changes, rank, stands.Probability) : null;

    // Of facts the most common comes first, for it is the likeliest to turn out so.
    private static Counterfactual? Best(IEnumerable<Counterfactual> found) => found
        .OrderBy(one => one.Changes.Sum(change => (int)change.Kind)).ThenByDescending(one => one.Changes.Min(change => change.Share)).ThenBy(one => one.Rank)
        .ThenByDescending(one => Math.Round(one.Probability, 9)).ThenBy(one => string.Join('+', one.Changes.Select(change => change.Id)), StringComparer.Ordinal)
        .FirstOrDefault();
}
