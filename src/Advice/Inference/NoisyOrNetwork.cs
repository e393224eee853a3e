namespace Advice.Inference;

/// <summary>A two-layer network of independent causes and the manifestations that they produce by noisy OR.</summary>
/// <param name="Priors">Probability of each cause before any manifestation is known, 0 … 1.</param>
/// <param name="Manifestations">What is known; what is not known is left out.</param>
public sealed record NoisyOrNetwork(IReadOnlyList<double> Priors, IReadOnlyList<Manifestation> Manifestations);
