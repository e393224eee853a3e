namespace Advice.Documents.Counterfactuals;

/// <summary>A change of the request, and what the service would then answer.</summary>
/// <param name="Parts">One thing that would have to be so, or two that would have to be so together.</param>
/// <param name="Rank">Place of the fault or check that would follow.</param>
/// <param name="Probability">Probability of the fault, or of the likeliest that the check finds, that would follow, to 4 decimals.</param>
public sealed record ChangeDocument(IReadOnlyList<ChangePartDocument> Parts, int Rank, double Probability);
