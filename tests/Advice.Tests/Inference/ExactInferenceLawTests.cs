using Advice.Inference;
using CsCheck;

namespace Advice.Tests.Inference;

public class ExactInferenceLawTests
{
    private static readonly Gen<(NoisyOrNetwork Network, int Seed)> Shuffled = Gen.Select(Networks.Small, Gen.Int);

    [Fact]
    public void Solve_ManifestationsAndLinksShuffledAndRepeated_SameBits() =>
        Shuffled.Sample(
            (network, seed) =>
            {
                var random = new Random(seed);
                Manifestation[] all = [.. network.Manifestations, .. network.Manifestations.Take(2)];
                random.Shuffle(all);
                var shuffled = network with
                {
                    Manifestations = [.. all.Select(manifestation => manifestation with { Links = ShuffledTwice(random, manifestation.Links) })],
                };
                AssertSameBits(ExactInference.Solve(network), ExactInference.Solve(shuffled));
            },
            iter: 2_000);

    [Fact]
    public void Solve_CausesRenumbered_PosteriorsFollow() =>
        Shuffled.Sample(
            (network, seed) =>
            {
                var place = Enumerable.Range(0, network.Priors.Count).ToArray();
                new Random(seed).Shuffle(place);
                var priors = new double[place.Length];
                for (var cause = 0; cause < place.Length; cause++)
                    priors[place[cause]] = network.Priors[cause];
                var renumbered = new NoisyOrNetwork(priors, [.. network.Manifestations.Select(manifestation => manifestation with
                {
                    Links = [.. manifestation.Links.Select(link => link with { Cause = place[link.Cause] })],
                })]);

                var expected = ExactInference.Solve(network);
                var actual = ExactInference.Solve(renumbered);
                for (var cause = 0; cause < place.Length; cause++)
                    Assert.Equal(expected.Probabilities[cause], actual.Probabilities[place[cause]], 1e-12);
            },
            iter: 2_000);

    [Fact]
    public void Solve_Again_SameBits() =>
        Gen.Select(Networks.Small, Networks.Small).Sample(
            (network, other) =>
            {
                var first = ExactInference.Solve(network);
                ExactInference.Solve(other); // leaves its numbers behind in the pooled tables
                AssertSameBits(first, ExactInference.Solve(network));
            },
            iter: 2_000);

    [Fact]
    public void Solve_OneManifestationMore_ChangesOnlyCausesWithAPathToIt() =>
        Networks.Uncertain.Where(network => network.Manifestations.Count > 0).Sample(
            network =>
            {
                var added = network.Manifestations[0];
                var without = network with { Manifestations = [.. network.Manifestations.Skip(1)] };
                var reached = Reached(added, without.Manifestations);
                var before = ExactInference.Solve(without);
                var after = ExactInference.Solve(network);
                for (var cause = 0; cause < network.Priors.Count; cause++)
                    if (!reached.Contains(cause))
                        Assert.Equal(before.Probabilities[cause], after.Probabilities[cause], 1e-12);
            },
            iter: 3_000);

    [Fact]
    public void Solve_DenialsOnly_LeavesCausesIndependent() =>
        Networks.Uncertain.Sample(
            network =>
            {
                var denied = network with
                {
                    Manifestations = [.. network.Manifestations.Select(manifestation => manifestation with { Present = false })],
                };
                var actual = ExactInference.Solve(denied);
                var evidence = denied.Manifestations.Sum(manifestation => Math.Log(1 - manifestation.Leak));
                for (var cause = 0; cause < network.Priors.Count; cause++)
                {
                    var silent = denied.Manifestations.Aggregate(1.0, (product, manifestation) => product * (1 - Strength(manifestation, cause)));
                    Assert.InRange(Odds(actual, cause) / (network.Priors[cause] / (1 - network.Priors[cause]) * silent), 1 - 1e-12, 1 + 1e-12);
                    evidence += Math.Log(1 - network.Priors[cause] * (1 - silent));
                }

                Assert.Equal(evidence, actual.LogEvidence, 1e-9);
            },
            iter: 2_000);

    [Fact]
    public void Solve_OtherCausesKnown_DenialMultipliesOddsByOneMinusStrength() =>
        Gen.Select(Networks.Uncertain, Gen.Int[0, 255]).Sample(
            (network, world) =>
            {
                var known = network with { Priors = [.. network.Priors.Select((prior, cause) => cause == 0 ? prior : world >> cause & 1)] };
                var links = Enumerable.Range(0, network.Priors.Count).Select(cause => new CauseLink(cause, 0.3));
                AssertOddsFactor(known, new Manifestation("denied", false, 0.1, [.. links]), 0.7);
            },
            iter: 2_000);

    [Fact]
    public void Solve_DenialLinkedToOneCauseOnly_MultipliesItsOddsAndNeverRaisesIt() =>
        Networks.Uncertain.Sample(
            network =>
            {
                var denial = new Manifestation("denied", false, 0.1, [new CauseLink(0, 0.8)]);
                AssertOddsFactor(network, denial, 0.2);
                Assert.True(With(network, denial).Probabilities[0] <= ExactInference.Solve(network).Probabilities[0]);
            },
            iter: 2_000);

    [Fact]
    public void Solve_DenialSharedWithACoupledCause_CanRaiseAPosterior()
    {
        // Both causes explain the noise; the denied smell speaks against the second far more, so that the first gains.
        var noise = new Manifestation("noise", true, 0.001, [new(0, 0.9), new(1, 0.9)]);
        var network = new NoisyOrNetwork([0.01, 0.01], [noise]);
        var smell = new Manifestation("smell", false, 0.01, [new(0, 0.05), new(1, 0.95)]);
        Assert.True(With(network, smell).Probabilities[0] > ExactInference.Solve(network).Probabilities[0]);
    }

    /// <summary>Compares probabilities, because the odds of what is nearly certain have few digits.</summary>
    private static void AssertOddsFactor(NoisyOrNetwork network, Manifestation denial, double factor)
    {
        var before = ExactInference.Solve(network).Probabilities[0];
        var expected = before * factor / (1 - before + before * factor);
        Assert.InRange(With(network, denial).Probabilities[0] / expected, 1 - 1e-9, 1 + 1e-9);
    }

    private static Posterior With(NoisyOrNetwork network, Manifestation added) =>
        ExactInference.Solve(network with { Manifestations = [.. network.Manifestations, added] });

    private static double Odds(Posterior posterior, int cause) => posterior.Probabilities[cause] / (1 - posterior.Probabilities[cause]);

    private static double Strength(Manifestation manifestation, int cause) =>
        manifestation.Links.Where(link => link.Cause == cause).Select(link => link.Strength).DefaultIfEmpty().Max();

    /// <summary>Causes linked to the manifestation, directly or through present manifestations.</summary>
    private static HashSet<int> Reached(Manifestation from, IReadOnlyList<Manifestation> others)
    {
        var reached = from.Links.Select(link => link.Cause).ToHashSet();
        for (var count = -1; count != reached.Count;)
        {
            count = reached.Count;
            foreach (var present in others.Where(other => other.Present && other.Links.Any(link => reached.Contains(link.Cause))))
                reached.UnionWith(present.Links.Select(link => link.Cause));
        }

        return reached;
    }

    private static CauseLink[] ShuffledTwice(Random random, IReadOnlyList<CauseLink> links)
    {
        CauseLink[] twice = [.. links, .. links];
        random.Shuffle(twice);
        return twice;
    }

    private static void AssertSameBits(Posterior expected, Posterior actual)
    {
        Assert.Equal(Bits(expected.LogEvidence), Bits(actual.LogEvidence));
        Assert.Equal(expected.Probabilities.Select(Bits), actual.Probabilities.Select(Bits));
    }

    private static long Bits(double value) => BitConverter.DoubleToInt64Bits(value);
}
