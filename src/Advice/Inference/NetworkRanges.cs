namespace Advice.Inference;

/// <summary>Refuses networks whose numbers are no probabilities or whose links lead nowhere.</summary>
internal static class NetworkRanges
{
    public static void Require(NoisyOrNetwork network)
    {
        foreach (var prior in network.Priors)
            RequireProbability(prior, "prior", "any cause");
        foreach (var manifestation in network.Manifestations)
        {
            RequireProbability(manifestation.Leak, "leak", manifestation.Id);
            foreach (var link in manifestation.Links)
            {
                RequireProbability(link.Strength, "strength", manifestation.Id);
                if (link.Cause < 0 || link.Cause >= network.Priors.Count)
                    throw new ArgumentException($"{manifestation.Id} links cause {link.Cause}, which is not in the network.", nameof(network));
            }
        }
    }

    private static void RequireProbability(double value, string what, string of)
    {
        if (value is not (>= 0 and <= 1))
            throw new ArgumentException($"The {what} of {of} must lie in 0 … 1, not {value}.");
    }
}
