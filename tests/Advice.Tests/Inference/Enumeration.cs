using Advice.Inference;

namespace Advice.Tests.Inference;

/// <summary>Posteriors by going through every combination of causes: slow, and too plain to be wrong.</summary>
internal static class Enumeration
{
    public static (double[] Probabilities, double Evidence) Solve(NoisyOrNetwork network)
    {
        var causes = network.Priors.Count;
        var joint = new double[causes];
        var evidence = 0.0;
        for (var world = 0; world < 1 << causes; world++)
        {
            var weight = 1.0;
            for (var cause = 0; cause < causes; cause++)
                weight *= IsPresent(world, cause) ? network.Priors[cause] : 1 - network.Priors[cause];
            foreach (var manifestation in network.Manifestations)
                weight *= manifestation.Present ? 1 - Absent(manifestation, world) : Absent(manifestation, world);
            evidence += weight;
            for (var cause = 0; cause < causes; cause++)
                if (IsPresent(world, cause))
                    joint[cause] += weight;
        }

        return ([.. joint.Select(value => value / evidence)], evidence);
    }

    private static double Absent(Manifestation manifestation, int world) =>
        manifestation.Links
            .Where(link => IsPresent(world, link.Cause))
            .GroupBy(link => link.Cause)
            .Aggregate(1 - manifestation.Leak, (silent, group) => silent * (1 - group.Max(link => link.Strength)));

    private static bool IsPresent(int world, int cause) => (world >> cause & 1) == 1;
}
