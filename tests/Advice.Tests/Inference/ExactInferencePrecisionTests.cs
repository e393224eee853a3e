using Advice.Inference;

namespace Advice.Tests.Inference;

/// <summary>Rare causes and many present manifestations, where the textbook sum loses every digit.</summary>
public class ExactInferencePrecisionTests
{
    public static TheoryData<int, int, double, double> Hard => new()
    {
        // seed, causes, prior, leak
        { 1, 24, 1e-5, 1e-4 },
        { 2, 36, 1e-5, 1e-3 },
        { 3, 48, 1e-5, 0 },
        { 4, 36, 1e-4, 0.05 },
        { 5, 24, 0.5, 1e-4 },
        { 6, 24, 1e-9, 0 },
    };

    [Theory]
    [MemberData(nameof(Hard))]
    public void Solve_TwelvePositives_EqualsExactArithmetic(int seed, int causes, double prior, double leak)
    {
        var network = Network(seed, causes, prior, leak);
        var (joint, evidence) = AlternatingSum.Solve(network, Fixed.From);
        var actual = ExactInference.Solve(network);

        Assert.Empty(actual.LeftOut);
        Assert.InRange(actual.LogEvidence, evidence.LogE - 1e-9, evidence.LogE + 1e-9);
        for (var cause = 0; cause < causes; cause++)
        {
            var expected = Fixed.Ratio(joint[cause], evidence);
            Assert.InRange(actual.Probabilities[cause] / expected, 1 - 1e-9, 1 + 1e-9);
        }
    }

    [Fact]
    public void AlternatingSum_InDoublesOnRareCauses_IsWorthless()
    {
        var network = Network(1, 24, 1e-5, 1e-4);
        var (_, evidence) = AlternatingSum.Solve(network, value => value);
        var exact = Math.Exp(AlternatingSum.Solve(network, Fixed.From).Evidence.LogE);
        Assert.NotInRange(evidence / exact, 0.5, 2);
    }

    /// <summary>12 present and 6 absent manifestations; of the causes a third each touch one, two and five of the present ones.</summary>
    private static NoisyOrNetwork Network(int seed, int causes, double prior, double leak)
    {
        var random = new Random(seed);
        var links = Enumerable.Range(0, 18).Select(_ => new List<CauseLink>()).ToArray();
        for (var cause = 0; cause < causes; cause++)
        {
            foreach (var sign in Pick(random, 0, 12, (cause % 3) switch { 0 => 1, 1 => 2, _ => 5 }))
                links[sign].Add(new CauseLink(cause, 0.05 + 0.9 * random.NextDouble()));
            foreach (var sign in Pick(random, 12, 6, 1))
                links[sign].Add(new CauseLink(cause, 0.05 + 0.9 * random.NextDouble()));
        }

        return new NoisyOrNetwork(
            [.. Enumerable.Range(0, causes).Select(_ => prior * (0.5 + 0.5 * random.NextDouble()))],
            [.. links.Select((list, sign) => new Manifestation($"m{sign:00}", sign < 12, leak, list))]);
    }

    private static int[] Pick(Random random, int from, int count, int howMany) =>
        Enumerable.Range(from, count).OrderBy(_ => random.Next()).Take(howMany).ToArray();
}
