using Advice.Ranking;
using CsCheck;

namespace Advice.Tests.Ranking;

public class OrderOfWorkTests
{
    private static readonly WorkSetUp[] SetUps =
    [
        new("cold-engine", 1, 4),
        new("wheels-chocked", 1, 2),
        new("raised", 3, 10),
        new("wheels-off", 4, 12),
        new("hot-engine", 5, 15),
        new("road", 9, 5),
    ];

    private static readonly Gen<WorkItem[]> Items =
        Gen.Select(Gen.Int[0, 3], Gen.Int[1, 20], Gen.Int[0, SetUps.Length - 1].Array[0, 3]).Array[0, 6]
            .Select(rows => rows
                .Select((row, index) => new WorkItem($"check{index}", row.Item1, row.Item2, [.. row.Item3.Select(setUp => SetUps[setUp])]))
                .ToArray());

    [Fact]
    public void Plan_Random_DoesEveryCheckOnceAndPaysEverySetUpOnce() =>
        Items.Sample(
            items =>
            {
                var visits = OrderOfWork.Plan(items);
                Assert.Equal(items.Select(item => item.Check).Order(), visits.SelectMany(visit => visit.Checks).Order());
                WorkSetUp[] distinct = [.. items.SelectMany(item => item.SetUps).Distinct()];
                Assert.Equal(distinct.Select(setUp => setUp.Id).Order(), visits.SelectMany(visit => visit.SetUps).Order());
                Assert.Equal(items.Sum(item => item.Minutes) + distinct.Sum(setUp => setUp.Minutes), visits.Sum(visit => visit.Minutes));
            },
            iter: 2_000);

    [Fact]
    public void Plan_Random_SetUpsStandBeforeTheirChecks() =>
        Items.Sample(
            items =>
            {
                var arranged = new HashSet<string>();
                foreach (var visit in OrderOfWork.Plan(items))
                {
                    arranged.UnionWith(visit.SetUps);
                    WorkSetUp[] needed = [.. visit.Checks.SelectMany(check => Item(items, check).SetUps)];
                    Assert.All(needed, setUp => Assert.Contains(setUp.Id, arranged));
                    Assert.All(visit.SetUps, id => Assert.Contains(needed, setUp => setUp.Id == id));
                }
            },
            iter: 2_000);

    [Fact]
    public void Plan_Random_StagesThenAreasThenGivenOrder() =>
        Items.Sample(
            items =>
            {
                var visits = OrderOfWork.Plan(items);
                var keys = visits
                    .SelectMany(visit => visit.Checks)
                    .Select(check => Item(items, check))
                    .Select(item => (Stage(item), item.AreaOrder, Array.IndexOf(items, item)))
                    .ToArray();
                Assert.Equal(keys.Order(), keys);
                Assert.All(visits, visit => Assert.All(visit.Checks, check => Assert.Equal(visit.AreaOrder, Item(items, check).AreaOrder)));
            },
            iter: 2_000);

    [Fact]
    public void Plan_Random_SetUpTimeAndVisitsAreLeastOfAllOrders() =>
        Items.Sample(
            items =>
            {
                var visits = OrderOfWork.Plan(items);
                var setUpMinutes = visits.Sum(visit => visit.Minutes) - items.Sum(item => item.Minutes);
                var orders = Orders(items).ToArray();
                Assert.Equal(orders.Min(SetUpMinutes), setUpMinutes);
                var permitted = orders.Where(order => order.Zip(order.Skip(1)).All(pair => Stage(pair.First) <= Stage(pair.Second)));
                Assert.Equal(permitted.Min(Visits), visits.Count);
            },
            iter: 300);

    [Fact]
    public void Plan_WalkRound_GroundLiftHotRoad()
    {
        WorkItem[] items =
        [
            new("road-test", 9, 15, [SetUps[5]]),
            new("joint-play", 4, 6, [SetUps[1], SetUps[2]]),
            new("tyre-tread", 2, 3, []),
            new("coolant-level", 1, 1, [SetUps[0]]),
            new("drive-shafts", 4, 5, [SetUps[2], SetUps[1]]),
            new("belt", 1, 3, [SetUps[0]]),
        ];
        var visits = OrderOfWork.Plan(items);
        Assert.Equal(["tyre-tread", "coolant-level belt", "joint-play drive-shafts", "road-test"], visits.Select(visit => string.Join(' ', visit.Checks)));
        Assert.Equal(["", "cold-engine", "wheels-chocked raised", "road"], visits.Select(visit => string.Join(' ', visit.SetUps)));
        Assert.Equal([3, 8, 23, 20], visits.Select(visit => visit.Minutes));
    }

    /// <summary>What an order costs where going back to a lower stage takes down every set-up of a higher order.</summary>
    private static int SetUpMinutes(WorkItem[] order)
    {
        var standing = new HashSet<WorkSetUp>();
        var minutes = 0;
        foreach (var item in order)
        {
            standing.RemoveWhere(setUp => setUp.Order > Stage(item));
            minutes += item.SetUps.Where(standing.Add).Sum(setUp => setUp.Minutes);
        }

        return minutes;
    }

    private static int Visits(WorkItem[] order) =>
        order.Where((item, place) => place == 0 || (Stage(order[place - 1]), order[place - 1].AreaOrder) != (Stage(item), item.AreaOrder)).Count();

    private static int Stage(WorkItem item) => item.SetUps.Count == 0 ? 0 : item.SetUps.Max(setUp => setUp.Order);

    private static WorkItem Item(WorkItem[] items, string check) => items.Single(item => item.Check == check);

    private static IEnumerable<WorkItem[]> Orders(WorkItem[] items) =>
        items.Length == 0
            ? [[]]
            : items.SelectMany((first, index) => Orders([.. items[..index], .. items[(index + 1)..]]).Select(rest => (WorkItem[])[first, .. rest]));
}
