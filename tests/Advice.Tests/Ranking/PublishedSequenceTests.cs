using Advice.Ranking;

namespace Advice.Tests.Ranking;

/// <summary>
/// The ratio rule p/C on worked examples. It is optimal for one fault, independent costs and a last action that is always done;
/// under those, harm found per minute with the costs as minutes is the same rule.
/// </summary>
public class PublishedSequenceTests
{
    /// <summary>
    /// Exercise of Jensen and Nielsen, Bayesian Networks and Decision Graphs, 2007, ch. 9–10 (statement read, costs computed):
    /// program 0.8, virus 0.15, hardware 0.05; action 1 repairs programs, 2 viruses at 0.95, 3 all but hardware at 0.99, 4 all.
    /// </summary>
    private static readonly double[] Faults = [0.8, 0.15, 0.05];

    private static readonly CheckOption[] Actions =
    [
        new("1", 1, [new(0, 1)]),
        new("2", 2, [new(1, 0.95)]),
        new("3", 25, [new(0, 0.99), new(1, 0.99)]),
        new("4", 500, [new(0, 1), new(1, 1), new(2, 1)]),
    ];

    [Fact]
    public void Greedy_RepairExercise_OneTwoThreeFourAt27875()
    {
        var ranked = HarmFoundRanking.Greedy(Faults, Actions);
        Assert.Equal(["1", "2", "3", "4"], ranked.Select(check => check.Id));
        Assert.Equal(27.875, ExpectedCost([.. ranked.Select(check => Actions.Single(action => action.Id == check.Id))]), 1e-9);
    }

    [Fact]
    public void ExpectedCost_RepairExercise_BestAndNextBestOfAllOrders()
    {
        var costs = Orders(Actions).Select(ExpectedCost).Select(cost => Math.Round(cost, 9)).Distinct().Order().ToArray();
        Assert.Equal([27.875, 29.3325], costs[..2]);
        Assert.Contains(30.15, costs);
        Assert.Contains(31.1405, costs);
        Assert.Contains(101.0, costs);
        Assert.Contains(500.0, costs);
    }

    [Theory]
    [InlineData("1", 0.8)]
    [InlineData("2", 0.07125)]
    [InlineData("3", 0.03762)]
    [InlineData("4", 0.002)]
    public void Greedy_RepairExercise_RatioAtTheStart(string action, double ratio) =>
        Assert.Equal(ratio, HarmFoundRanking.Greedy(Faults, [Actions.Single(option => option.Id == action)])[0].HarmPerMinute, 1e-12);

    /// <summary>Own example for the rule: p 0.4 0.3 0.2 0.1, C 8 3 1 4: order 3, 2, 1, 4 at 7.8; by p alone 10.5, by cost alone 8.6.</summary>
    [Fact]
    public void Greedy_PerfectTests_IsOptimalOverAllOrders()
    {
        double[] probabilities = [0.4, 0.3, 0.2, 0.1];
        double[] costs = [8, 3, 1, 4];
        CheckOption[] tests = [.. costs.Select((cost, index) => new CheckOption($"{index + 1}", cost, [new(index, 1)]))];
        var ranked = HarmFoundRanking.Greedy(probabilities, tests);
        Assert.Equal(["3", "2", "1", "4"], ranked.Select(check => check.Id));
        Assert.Equal(7.8, Cost([.. ranked.Select(check => tests.Single(test => test.Id == check.Id))]), 1e-9);
        Assert.Equal(7.8, Orders(tests).Min(Cost), 1e-9);
        Assert.Equal(10.5, Cost(tests), 1e-9);
        Assert.Equal(8.6, Cost([.. tests.OrderBy(test => test.Minutes)]), 1e-9);

        double Cost(CheckOption[] order) =>
            order.Select((test, place) => test.Minutes * order[place..].Sum(later => probabilities[later.Detections[0].Cause])).Sum();
    }

    /// <summary>Σ cost · P(still faulty).</summary>
    private static double ExpectedCost(CheckOption[] order)
    {
        var left = Faults.ToArray();
        var cost = 0.0;
        foreach (var action in order)
        {
            cost += action.Minutes * left.Sum();
            foreach (var (cause, surely) in action.Detections)
                left[cause] *= 1 - surely;
        }

        return cost;
    }

    private static IEnumerable<CheckOption[]> Orders(CheckOption[] options) =>
        options.Length == 0
            ? [[]]
            : options.SelectMany(first => Orders([.. options.Where(option => option != first)]).Select(rest => (CheckOption[])[first, .. rest]));
}
