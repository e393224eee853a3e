namespace Advice.Inference;

/// <summary>
/// Exact posteriors of a two-layer noisy-OR network, in time O(causes · k · 2^k) for k present manifestations.
/// The idea is Heckerman 1989 (Quickscore); his alternating sum loses its digits where causes are rare and signs several,
/// so that this one adds positive terms only.
/// </summary>
public static class ExactInference
{
    /// <summary>The most present manifestations that count: those least probable beforehand, ties by id.</summary>
    public const int MostPositives = 12;

    /// <summary>
    /// P(cause | manifestations) of every cause. Where the manifestations cannot happen (or are less probable than 1e-290)
    /// nothing can be learnt from them: the priors come back, with a log evidence of −∞.
    /// </summary>
    /// <exception cref="ArgumentException">A number is no probability, or a link names no cause of the network.</exception>
    public static Posterior Solve(NoisyOrNetwork network)
    {
        ArgumentNullException.ThrowIfNull(network);
        NetworkRanges.Require(network);

        var (kept, leftOut) = LeastProbable(MergedSign.All(network, present: true), network.Priors);
        var probabilities = network.Priors.ToArray();
        var logEvidence = Denials.Fold(MergedSign.All(network, present: false), probabilities);
        if (double.IsFinite(logEvidence))
            logEvidence += Math.Log(ExplanationSweep.Run(new PresentSigns(kept, probabilities), probabilities));

        return double.IsFinite(logEvidence)
            ? new Posterior(probabilities, logEvidence, leftOut)
            : new Posterior(network.Priors.ToArray(), double.NegativeInfinity, leftOut);
    }

    private static (IReadOnlyList<MergedSign> Kept, IReadOnlyList<string> LeftOut) LeastProbable(
        MergedSign[] present, IReadOnlyList<double> priors)
    {
        if (present.Length <= MostPositives)
            return (present, []);

        // Rounding makes ties of what differs only by the order of multiplication.
        var ranked = present
            .OrderBy(sign => Math.Round(sign.PriorProbability(priors), 12))
            .ThenBy(sign => sign.Id, StringComparer.Ordinal)
            .ToArray();
        return (
            [.. ranked[..MostPositives].OrderBy(sign => sign.Id, StringComparer.Ordinal)],
            [.. ranked[MostPositives..].Select(sign => sign.Id).Order(StringComparer.Ordinal)]);
    }
}
