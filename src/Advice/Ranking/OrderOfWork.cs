namespace Advice.Ranking;

/// <summary>
/// The chosen checks as a person would walk them: on the ground before on the lift, cold before hot, the road last;
/// one visit to an area at each of these stages; every set-up arranged once and kept.
/// </summary>
public static class OrderOfWork
{
    /// <summary>
    /// Visits in order. The stage of a check is the highest order among its set-ups, 0 without any; stages come first, then areas,
    /// then the given order. Stages never fall, so that no set-up has to be arranged a second time.
    /// </summary>
    public static IReadOnlyList<Visit> Plan(IReadOnlyList<WorkItem> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        var arranged = new HashSet<string>(StringComparer.Ordinal);
        return
        [
            .. items
                .GroupBy(item => (Stage: Stage(item), item.AreaOrder))
                .OrderBy(visit => visit.Key.Stage)
                .ThenBy(visit => visit.Key.AreaOrder)
                .Select(visit => ToVisit(visit.Key.AreaOrder, [.. visit], arranged)),
        ];
    }

    private static int Stage(WorkItem item) =>
        item.SetUps.Select(setUp => setUp.Order).DefaultIfEmpty(0).Max();

    private static Visit ToVisit(int areaOrder, IReadOnlyList<WorkItem> items, HashSet<string> arranged)
    {
        WorkSetUp[] newly =
        [
            .. items
                .SelectMany(item => item.SetUps)
                .Where(setUp => arranged.Add(setUp.Id))
                .OrderBy(setUp => setUp.Order)
                .ThenBy(setUp => setUp.Id, StringComparer.Ordinal),
        ];
        return new Visit(
            areaOrder,
            [.. newly.Select(setUp => setUp.Id)],
            [.. items.Select(item => item.Check)],
            items.Sum(item => item.Minutes) + newly.Sum(setUp => setUp.Minutes));
    }
}
