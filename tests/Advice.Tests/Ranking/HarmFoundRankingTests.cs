using Advice.Ranking;
using CsCheck;

namespace Advice.Tests.Ranking;

public class HarmFoundRankingTests
{
    [Fact]
    public void Greedy_EveryStep_IsTheBestLeftAndSaysWhatItFinds() =>
        Choices.Small.Sample(
            choices =>
            {
                var ranked = HarmFoundRanking.Greedy(choices.Weights, choices.Options);
                var chosen = choices.Chosen(ranked);
                Assert.Equal(chosen.Length, chosen.Distinct().Count());
                for (var step = 0; step < chosen.Length; step++)
                {
                    Assert.Equal(Gain(chosen[..step], chosen[step]), ranked[step].HarmFound, 1e-9);
                    Assert.Equal(ranked[step].HarmFound / chosen[step].Minutes, ranked[step].HarmPerMinute, 1e-12);
                    Assert.False(ranked[step].Lifted);
                    foreach (var later in choices.Options.Except(chosen[..step]))
                        Assert.True(Gain(chosen[..step], later) / later.Minutes <= ranked[step].HarmPerMinute + 2e-9);
                }

                Assert.All(choices.Options.Except(chosen), option => Assert.True(Gain(chosen, option) <= 1.1e-9));

                double Gain(CheckOption[] done, CheckOption option) => choices.HarmFound([.. done, option]) - choices.HarmFound(done);
            },
            iter: 1_000);

    [Fact]
    public void Greedy_OptionsAndDetectionsShuffledAndRepeated_SameOrder() =>
        Gen.Select(Choices.Small, Gen.Int).Sample(
            (choices, seed) =>
            {
                var random = new Random(seed);
                CheckOption[] shuffled =
                [
                    .. choices.Options.Select(option => option with { Detections = [.. option.Detections, .. option.Detections.Reverse()] }),
                ];
                random.Shuffle(shuffled);
                Assert.Equal(HarmFoundRanking.Greedy(choices.Weights, choices.Options), HarmFoundRanking.Greedy(choices.Weights, shuffled));
            },
            iter: 1_000);

    [Fact]
    public void Greedy_Tie_GoesById()
    {
        // 0.1 + 0.2 exceeds 0.3 in the last bit, which must not put b before a; ordinal puts B before both.
        double[] weights = [0.1, 0.2, 0.3, 0.3];
        CheckOption[] options = [new("b", 1, [new(0, 1), new(1, 1)]), new("a", 1, [new(2, 1)]), new("B", 1, [new(3, 1)])];
        Assert.Equal(["B", "a", "b"], HarmFoundRanking.Greedy(weights, options).Select(check => check.Id));
    }

    [Fact]
    public void Greedy_FindsNothing_IsEmpty()
    {
        Assert.Empty(HarmFoundRanking.Greedy([1e-9], [new("a", 1, [new(0, 1)])]));
        Assert.Empty(HarmFoundRanking.Greedy([1], [new("a", 1, []), new("b", 1, [new(0, 0)])]));
        Assert.Empty(HarmFoundRanking.Greedy([], []));
    }

    [Fact]
    public void WithinBudget_LongCheckBehindAShortOne_TakesTheLongOneAndFillsUp()
    {
        CheckOption[] options = [new("short", 1, [new(0, 1)]), new("long", 58, [new(1, 1)]), new("little", 2, [new(2, 1)])];
        double[] weights = [0.1, 5, 0.01];
        Assert.Equal(["short", "little"], HarmFoundRanking.WithinBudget(weights, options, 57).Select(check => check.Id));
        Assert.Equal(["long"], HarmFoundRanking.WithinBudget(weights, options, 58).Select(check => check.Id));
        Assert.Equal(["short", "long"], HarmFoundRanking.WithinBudget(weights, options, 59).Select(check => check.Id));
        Assert.Equal(["short", "long", "little"], HarmFoundRanking.WithinBudget(weights, options, 61).Select(check => check.Id));

        // At 60 the short one, now of 2.5 minutes, keeps the long one out: this goes first, and the little one fits beside it.
        options[0] = options[0] with { Minutes = 2.5 };
        Assert.Equal(["long", "little"], HarmFoundRanking.WithinBudget([0.3, 5, 0.01], options, 60).Select(check => check.Id));
    }

    [Fact]
    public void WithinBudget_EnoughMinutes_IsGreedy() =>
        Choices.Small.Sample(
            choices => Assert.Equal(
                HarmFoundRanking.Greedy(choices.Weights, choices.Options),
                HarmFoundRanking.WithinBudget(choices.Weights, choices.Options, choices.Options.Sum(option => option.Minutes))),
            iter: 500);

    [Theory]
    [InlineData(-1, 1, 0.5, 0)]
    [InlineData(double.NaN, 1, 0.5, 0)]
    [InlineData(1, 0, 0.5, 0)]
    [InlineData(1, 1, 1.5, 0)]
    [InlineData(1, 1, 0.5, 1)]
    public void Greedy_OutOfRange_Refuses(double weight, double minutes, double surely, int cause) =>
        Assert.Throws<ArgumentException>(() => HarmFoundRanking.Greedy([weight], [new("a", minutes, [new(cause, surely)])]));
}
