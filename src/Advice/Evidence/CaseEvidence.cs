namespace Advice.Evidence;

/// <summary>What the rules found to apply to a case. Every list has a fixed order that depends on the case alone.</summary>
/// <param name="Links">Links between faults and the signs of the case, by sign, then rule.</param>
/// <param name="Factors">Factors on the odds of the linked faults, by fault, then rule.</param>
/// <param name="Implied">Signs that follow from others, by sign.</param>
/// <param name="Normals">Reports that may be no fault, by rule.</param>
public sealed record CaseEvidence(
    IReadOnlyList<Link> Links, IReadOnlyList<OddsFactor> Factors, IReadOnlyList<ImpliedSign> Implied, IReadOnlyList<NormalReport> Normals);
