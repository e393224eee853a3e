using System.Globalization;

namespace Advice.Rules.Bench.Sensitivity;

/// <summary>Stability in lines that a person understands.</summary>
public static class StabilityReport
{
    private const double Target = 0.9;
    private const int MostNamed = 10;

    /// <summary>The whole set: each word and kind of base rate alone, then everything at random.</summary>
    public static IEnumerable<string> Whole(IReadOnlyList<Outcome> oneAtATime, IReadOnlyList<Outcome> atRandom)
    {
        yield return "One at a time: share of the cases whose first step stays, and whose first three stay (in any order)";
        foreach (var outcome in oneAtATime.OrderBy(outcome => outcome.FirstStays))
            yield return Line(outcome);
        yield return "";
        yield return "All at random: each link moved by -1, 0 or +1 notch and each base rate by ½, 1 or 2, independently";
        foreach (var outcome in atRandom)
            yield return Line(outcome);
        var moved = atRandom.SelectMany(outcome => outcome.Moved).ToList();
        yield return "";
        yield return $"One estimate moved at a time: {Summary(oneAtATime)}";
        yield return $"All estimates moved at once:  {Summary(atRandom)}";
        yield return string.Create(CultureInfo.InvariantCulture, $"It stays in every draw in {atRandom[0].Cases - moved.Select(one => one.Case).Distinct().Count()} of {atRandom[0].Cases} cases.");
        yield return "Cases that move most often:";
        foreach (var one in moved.GroupBy(one => (one.Case, one.Was)).OrderByDescending(group => group.Count()).ThenBy(group => group.Key.Case, StringComparer.Ordinal).Take(MostNamed))
        {
            var instead = one.GroupBy(move => move.Is ?? "no step").OrderByDescending(group => group.Count()).ThenBy(group => group.Key, StringComparer.Ordinal).First().Key;
            yield return string.Create(CultureInfo.InvariantCulture, $"  {one.Key.Case}: {one.Count()} of {atRandom.Count} draws, {one.Key.Was} → mostly {instead}");
        }
    }

    /// <summary>One entry: which cases change when it alone moves.</summary>
    public static IEnumerable<string> Single(IEnumerable<Outcome> outcomes)
    {
        foreach (var outcome in outcomes)
        {
            yield return Line(outcome);
            foreach (var (id, was, now) in outcome.Moved)
                yield return $"    {id}: first step {was} → {now ?? "none"}";
        }
    }

    private static string Summary(IReadOnlyList<Outcome> outcomes)
    {
        var (mean, worst) = (outcomes.Average(outcome => outcome.FirstStays), outcomes.Min(outcome => outcome.FirstStays));
        return string.Create(CultureInfo.InvariantCulture, $"the first step stays in {mean:P1} of the cases on average, in {worst:P1} at worst ({(worst < Target ? "below" : "at or above")} the target of {Target:P0}); the first three in {outcomes.Average(outcome => outcome.ThreeStay):P1}.");
    }

    private static string Line(Outcome outcome) =>
        string.Create(CultureInfo.InvariantCulture, $"  {outcome.FirstStays,7:P1} {outcome.ThreeStay,7:P1}  {outcome.Name}");
}
