using Advice.Ranking;

namespace Advice.Inspections;

/// <summary>
/// Orders the checks of an inspection by harm found per minute where set-ups are shared: a set-up is worth arranging for the best
/// checks that it opens together, so it is weighed with those and not with one check alone.
/// </summary>
internal sealed class InspectionRanking(SharedSetUps setUps, IReadOnlyList<InspectionOption> options, HarmLeft left, double minutes)
{
    private const double LeastGain = 1e-9;

    private readonly List<InspectionOption> _open = [.. options];
    private readonly List<RankedCheck> _ranked = [];
    private readonly ulong[] _needs = [.. options.Select(option => option.SetUps).Distinct().Order()];
    private ulong _arranged;
    private double _minutes = minutes;

    /// <summary>The checks in order: those to do first, then greedily what still fits; ties by id.</summary>
    /// <param name="first">Ids of the checks to do first, in order.</param>
    /// <param name="most">The most checks to choose.</param>
    /// <param name="next">Which of the checks that find most and still fit come after those, however long they take: 0 = the one that finds most.</param>
    public IReadOnlyList<RankedCheck> Rank(IEnumerable<string> first, int most, params ReadOnlySpan<int> next)
    {
        foreach (var id in first)
        {
            if (_open.Find(option => option.Check.Id == id) is { } option && Cost(option) <= _minutes)
                Do(option, option.SetUps, lifted: true);
        }

        foreach (var place in next)
        {
            if (_ranked.Count < most && Largest().ElementAtOrDefault(place) is { } largest)
                Do(largest, largest.SetUps, lifted: false);
        }

        while (_ranked.Count < most && Best() is { Option: { } best } group)
            Do(best, group.SetUps, lifted: false);
        return _ranked;
    }

    /// <summary>The checks in order: those to do first, then the walk until the time is up, then greedily what still fits.</summary>
    /// <param name="first">Ids of the checks to do first, in order.</param>
    /// <param name="most">The most checks to choose.</param>
    /// <param name="walk">Ids of checks in order of work.</param>
    public IReadOnlyList<RankedCheck> Walk(IEnumerable<string> first, int most, IEnumerable<string> walk)
    {
        Rank(first, 0);
        foreach (var option in walk.Select(id => _open.Find(option => option.Check.Id == id)).OfType<InspectionOption>().TakeWhile(option => _ranked.Count < most && Cost(option) <= _minutes))
            Do(option, option.SetUps, lifted: false);
        return Rank([], most);
    }

    private IEnumerable<InspectionOption> Largest() =>
        _open.Where(option => Cost(option) <= _minutes).OrderByDescending(option => Math.Round(left.FoundBy(option.Candidate), 9));

    /// <summary>What each open check would find now, densest first, ties by id.</summary>
    private List<(InspectionOption Option, double Gain, double Density)> ByDensity()
    {
        var all = new List<(InspectionOption Option, double Gain, double Density)>(_open.Count);
        foreach (var option in _open)
        {
            if (left.FoundBy(option.Candidate) is > LeastGain and var gain)
                all.Add((option, gain, Math.Round(gain / option.Check.Minutes, 9)));
        }

        all.Sort((a, b) => b.Density.CompareTo(a.Density) is not 0 and var order ? order : string.CompareOrdinal(a.Option.Check.Id, b.Option.Check.Id));
        return all;
    }

    private double Cost(InspectionOption option) => option.Check.Minutes + setUps.Minutes(option.SetUps & ~_arranged);

    private void Do(InspectionOption option, ulong needs, bool lifted)
    {
        _minutes -= option.Check.Minutes + setUps.Minutes(needs & ~_arranged);
        _arranged |= needs;
        _open.Remove(option);
        _ranked.Add(left.Do(option.Candidate, lifted));
    }

    /// <summary>The first check of the best group, with the set-ups of that group.</summary>
    private (InspectionOption? Option, ulong SetUps) Best()
    {
        var byDensity = ByDensity();
        (InspectionOption? Option, ulong SetUps, double Density) best = default;
        foreach (var needs in _needs)
        {
            var available = needs | _arranged;
            var spent = (double)setUps.Minutes(needs & ~_arranged);
            var (gain, density, head) = (0.0, 0.0, (InspectionOption?)null);
            foreach (var one in byDensity)
            {
                if ((one.Option.SetUps & ~available) != 0 || spent + one.Option.Check.Minutes > _minutes)
                    continue;
                if (one.Density <= density)
                    break;
                head ??= one.Option;
                (gain, spent) = (gain + one.Gain, spent + one.Option.Check.Minutes);
                density = gain / spent;
            }

            if (head is not null && Math.Round(density, 9) > Math.Round(best.Density, 9))
                best = (head, needs, density);
        }

        return (best.Option, best.SetUps);
    }
}
