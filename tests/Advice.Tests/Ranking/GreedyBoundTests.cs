using Advice.Ranking;
using CsCheck;
using Xunit.Abstractions;

namespace Advice.Tests.Ranking;

/// <summary>The promises of greedy against every set of checks (Streeter and Golovin 2008, from memory).</summary>
public class GreedyBoundTests(ITestOutputHelper output)
{
    private const double Bound = 1 - 1 / Math.E;
    private const double Rounding = 1e-6;

    [Fact]
    public void Greedy_AtTheEndOfEachStep_HoldsItsShareOfTheBest()
    {
        var tally = new Tally();
        Choices.Small.Sample(
            choices =>
            {
                var chosen = choices.Chosen(HarmFoundRanking.Greedy(choices.Weights, choices.Options));
                for (var steps = 1; steps <= chosen.Length; steps++)
                {
                    var done = chosen[..steps];
                    var best = choices.BestHarmFound(done.Sum(option => option.Minutes));
                    var found = choices.HarmFound(done);
                    tally.Count(found, best);
                    Assert.True(found >= Bound * best - Rounding, $"{found} of {best}");
                }
            },
            iter: 1_000);
        output.WriteLine($"Greedy steps: {tally}");
    }

    [Fact]
    public void WithinBudget_HoldsItsShareOfTheBest()
    {
        var tally = new Tally();
        Gen.Select(Choices.Small, Gen.Int[0, 80]).Sample(
            (choices, minutes) =>
            {
                var chosen = choices.Chosen(HarmFoundRanking.WithinBudget(choices.Weights, choices.Options, minutes));
                Assert.True(chosen.Sum(option => option.Minutes) <= minutes);
                var best = choices.BestHarmFound(minutes);
                var found = choices.HarmFound(chosen);
                tally.Count(found, best);
                Assert.True(found >= Bound / 2 * best - Rounding, $"{found} of {best}");
            },
            iter: 3_000);
        output.WriteLine($"Budgets: {tally}");
    }

    private sealed class Tally
    {
        private readonly Lock _lock = new();
        private int _count;
        private int _optimal;
        private double _worst = 1;

        public void Count(double found, double best)
        {
            lock (_lock)
            {
                _count++;
                if (found >= best - Rounding)
                    _optimal++;
                else
                    _worst = Math.Min(_worst, found / best);
            }
        }

        public override string ToString() => FormattableString.Invariant($"{_optimal} of {_count} optimal, worst {_worst:0.000} of the best");
    }
}
