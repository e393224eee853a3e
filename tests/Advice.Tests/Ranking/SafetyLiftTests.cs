using Advice.Ranking;
using CsCheck;

namespace Advice.Tests.Ranking;

public class SafetyLiftTests
{
    private static readonly double[] Weights = [5, 0.2, 0.1];

    private static readonly CheckOption[] Options =
    [
        new("a-glance", 1, [new(0, 0.9)]),
        new("b-brakes", 30, [new(1, 0.9), new(2, 0.4)]),
        new("c-brakes-quick", 5, [new(1, 0.8)]),
        new("d-steering", 10, [new(2, 0.7)]),
        new("e-steering", 8, [new(2, 0.7)]),
    ];

    [Fact]
    public void GreedyWithLift_NothingUrgent_IsGreedy() =>
        Choices.Small.Sample(
            choices => Assert.Equal(
                HarmFoundRanking.Greedy(choices.Weights, choices.Options),
                HarmFoundRanking.GreedyWithLift(choices.Weights, choices.Options, [])),
            iter: 500);

    [Fact]
    public void GreedyWithLift_UrgentCauses_MostHarmPerMinuteFirst()
    {
        var ranked = HarmFoundRanking.GreedyWithLift(Weights, Options, [2, 1]);
        Assert.Equal(["c-brakes-quick", "e-steering", "a-glance"], ranked.Take(3).Select(check => check.Id));
        Assert.Equal([true, true, false], ranked.Take(3).Select(check => check.Lifted));
        Assert.Equal(0.2 * 0.8, ranked[0].HarmFound, 1e-12);
        Assert.Equal(0.1 * 0.7 / 8, ranked[1].HarmPerMinute, 1e-12);
    }

    [Fact]
    public void GreedyWithLift_FoundWellEnoughByALiftedCheck_LiftsNoSecond()
    {
        CheckOption[] options = [Options[2] with { Detections = [new(1, 0.8), new(2, 0.5)] }, .. Options[3..]];
        var ranked = HarmFoundRanking.GreedyWithLift(Weights, options, [1, 2]);
        Assert.Equal(["c-brakes-quick"], ranked.Where(check => check.Lifted).Select(check => check.Id));
    }

    [Fact]
    public void GreedyWithLift_QuickCheckIsTooUnsure_LiftsTheSurerOne()
    {
        CheckOption[] options = [Options[1], Options[2] with { Detections = [new(1, 0.4)] }];
        var ranked = HarmFoundRanking.GreedyWithLift(Weights, options, [1]);
        Assert.Equal(["b-brakes"], ranked.Where(check => check.Lifted).Select(check => check.Id));
    }

    [Fact]
    public void GreedyWithLift_TwoLookForIt_LiftsTheOneThatFindsMoreBesides()
    {
        CheckOption[] options = [new("a-rim", 5, [new(1, 0.9)]), new("b-soap", 12, [new(0, 0.8), new(1, 0.6)])];
        Assert.Equal(["b-soap"], HarmFoundRanking.GreedyWithLift([3, 0.6], options, [1]).Where(check => check.Lifted).Select(check => check.Id));
    }

    [Fact]
    public void GreedyWithLift_NothingFindsIt_LiftsNothing() =>
        Assert.DoesNotContain(HarmFoundRanking.GreedyWithLift([1, 1], new CheckOption[] { new("a", 1, [new(0, 1)]) }, [1]), check => check.Lifted);

    [Fact]
    public void GreedyWithLift_EqualChecks_LiftsTheFirstId() =>
        Assert.Equal("a", HarmFoundRanking.GreedyWithLift([1], new CheckOption[] { new("b", 1, [new(0, 0.3)]), new("a", 1, [new(0, 0.3)]) }, [0])[0].Id);

    [Fact]
    public void GreedyWithLift_Random_LiftsFirstAndGoesOnGreedily() =>
        Gen.Select(Choices.Small, Gen.Int[0, 31]).Sample(
            (choices, mask) =>
            {
                int[] urgent = [.. Enumerable.Range(0, choices.Weights.Length).Where(cause => (mask >> cause & 1) == 1)];
                var ranked = HarmFoundRanking.GreedyWithLift(choices.Weights, choices.Options, urgent);
                var lifted = choices.Chosen(ranked.TakeWhile(check => check.Lifted));
                Assert.All(ranked.Skip(lifted.Length), check => Assert.False(check.Lifted));
                Assert.All(urgent.Where(cause => choices.Weights[cause] > 0), cause => Assert.True(
                    1 - lifted.Aggregate(1.0, (missed, done) => missed * (1 - Choices.Surely(done, cause))) >= 0.5 - 1e-9
                    || choices.Options.Except(lifted).All(option => choices.Weights[cause] * Choices.Surely(option, cause) <= 1e-8)));
                Assert.All(lifted, done => Assert.Contains(urgent, cause => Choices.Surely(done, cause) > 0));

                // With the harm that the lifted checks leave as weights, plain greedy gives the rest.
                double[] left =
                [
                    .. choices.Weights.Select((weight, cause) => lifted.Aggregate(weight, (rest, done) => rest * (1 - Choices.Surely(done, cause)))),
                ];
                Assert.Equal(
                    HarmFoundRanking.Greedy(left, [.. choices.Options.Except(lifted)]).Select(check => check.Id),
                    ranked.Skip(lifted.Length).Select(check => check.Id));
            },
            iter: 1_000);
}
