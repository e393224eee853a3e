namespace Advice.Counterfactuals;

/// <summary>What would follow if a case were changed, found by assessing the changed case.</summary>
/// <param name="Changes">The changes, one or two.</param>
/// <param name="Rank">Place among the suspects or steps that would follow, from 1.</param>
/// <param name="Probability">Probability of the fault that would follow.</param>
public sealed record Counterfactual(IReadOnlyList<Change> Changes, int Rank, double Probability);
