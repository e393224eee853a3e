namespace Advice.Inference;

/// <summary>What the manifestations say about the causes.</summary>
/// <param name="Probabilities">Probability of each cause given the manifestations that count, 0 … 1, in the order of the priors.</param>
/// <param name="LogEvidence">Natural logarithm of the probability of the manifestations that count; −∞ where they cannot happen.</param>
/// <param name="LeftOut">Ids of the present manifestations that do not count, ordinal.</param>
public sealed record Posterior(IReadOnlyList<double> Probabilities, double LogEvidence, IReadOnlyList<string> LeftOut);
