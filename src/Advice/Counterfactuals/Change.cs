using Advice.Knowledge;

namespace Advice.Counterfactuals;

/// <summary>The smallest change of a case that was found.</summary>
/// <param name="Symptom">The symptom that would have to be reported besides.</param>
/// <param name="Occasions">On which of these occasions, any; empty = at any time.</param>
/// <param name="Rank">Place among the suspects or steps that would follow, from 1.</param>
/// <param name="Probability">Probability of the fault that would follow.</param>
public sealed record Change(Symptom Symptom, IReadOnlyList<string> Occasions, int Rank, double Probability);
