using Advice.Inference;

namespace Advice.Tests.Inference;

public class ExactInferenceTests
{
    [Fact]
    public void Solve_NothingKnown_GivesPriors()
    {
        var posterior = ExactInference.Solve(new NoisyOrNetwork([0.2, 0, 1], []));
        Assert.Equal([0.2, 0, 1], posterior.Probabilities);
        Assert.Equal(0, posterior.LogEvidence);
        Assert.Empty(posterior.LeftOut);
    }

    [Fact]
    public void Solve_MoreThanTwelvePositives_LeavesOutTheMostProbableThenTheLastId()
    {
        var rare = Enumerable.Range(0, 10).Select(index => new Manifestation($"rare{index}", true, 0.001, [new(0, 0.5)]));
        string[] equal = ["B", "a", "C", "d"]; // ordinal: B C a d
        var ordinary = equal.Select(id => new Manifestation(id, true, 0.01, [new(1, 0.5)]));
        var common = new Manifestation("common", true, 0.4, [new(1, 0.9)]);
        var denied = new Manifestation("denied", false, 0.9, [new(1, 0.3)]);
        NoisyOrNetwork network = new([0.01, 0.02], [common, .. ordinary, denied, .. rare]);

        var posterior = ExactInference.Solve(network);

        Assert.Equal(["a", "common", "d"], posterior.LeftOut);
        var kept = ExactInference.Solve(network with
        {
            Manifestations = [.. network.Manifestations.Where(manifestation => !posterior.LeftOut.Contains(manifestation.Id))],
        });
        Assert.Equal(kept.Probabilities, posterior.Probabilities);
        Assert.Equal(kept.LogEvidence, posterior.LogEvidence);
    }

    [Fact]
    public void Solve_EquallyProbablePositives_AreATieInAnyOrderOfMultiplication()
    {
        // 1 − 0.99·0.99·0.99·0.98 is 0.0491…13 from the left and 0.0491…02 from the right: rounding alone would put "b" first.
        Manifestation a = new("a", true, 0.01, [new(0, 0.1), new(1, 0.1), new(2, 0.2)]);
        Manifestation b = new("b", true, 0.01, [new(0, 0.2), new(1, 0.1), new(2, 0.1)]);
        var rare = Enumerable.Range(0, 11).Select(index => new Manifestation($"rare{index:00}", true, 0.001, []));
        Assert.Equal(["b"], ExactInference.Solve(new NoisyOrNetwork([0.1, 0.1, 0.1], [b, a, .. rare])).LeftOut);
    }

    [Fact]
    public void Solve_OneIdTwice_CountsOnceWithTheLargestStrength()
    {
        var twice = Solve(new("m", true, 0.1, [new(0, 0.2), new(1, 0.6)]), new("m", true, 0.05, [new(0, 0.7)]));
        var once = Solve(new Manifestation("m", true, 0.1, [new(0, 0.7), new(1, 0.6)]));
        Assert.Equal(once.Probabilities, twice.Probabilities);
    }

    [Fact]
    public void Solve_ExplainedByACertainCause_ExplainsTheOtherAway()
    {
        var alone = ExactInference.Solve(new NoisyOrNetwork([0.1, 0], [new("m", true, 0.001, [new(0, 0.9), new(1, 0.9)])]));
        var beside = ExactInference.Solve(new NoisyOrNetwork([0.1, 1], [new("m", true, 0.001, [new(0, 0.9), new(1, 0.9)])]));
        Assert.True(alone.Probabilities[0] > 0.98);
        Assert.True(beside.Probabilities[0] < 0.12);
    }

    [Theory]
    [InlineData(true, 0.0)] // present, though nothing can produce it
    [InlineData(false, 1.0)] // absent, though it always shows
    public void Solve_ImpossibleEvidence_GivesPriorsBack(bool present, double leak)
    {
        var posterior = Solve(new Manifestation("m", present, leak, []), new Manifestation("denied", false, 0, [new(0, 0.5)]));
        Assert.Equal([0.3, 0.4], posterior.Probabilities);
        Assert.Equal(double.NegativeInfinity, posterior.LogEvidence);
    }

    [Theory]
    [InlineData(-0.1, 0.5, 0.5, 0)]
    [InlineData(0.1, 1.5, 0.5, 0)]
    [InlineData(0.1, 0.5, double.NaN, 0)]
    [InlineData(0.1, 0.5, 0.5, 1)]
    [InlineData(0.1, 0.5, 0.5, -1)]
    public void Solve_OutOfRange_Refuses(double prior, double leak, double strength, int cause) =>
        Assert.Throws<ArgumentException>(() =>
            ExactInference.Solve(new NoisyOrNetwork([prior], [new("m", true, leak, [new(cause, strength)])])));

    private static Posterior Solve(params Manifestation[] manifestations) =>
        ExactInference.Solve(new NoisyOrNetwork([0.3, 0.4], manifestations));
}
