namespace Advice.Documents.Counterfactuals;

/// <summary>How a fault stands in a case.</summary>
/// <param name="Fault">Id of the fault.</param>
/// <param name="Name">Its name.</param>
/// <param name="Rank">Its place among all suspects, from 1; null where the case does not raise it.</param>
/// <param name="Probability">Its probability, to 4 decimals; null where the case does not raise it.</param>
/// <param name="Conditions">What would speak for it.</param>
/// <param name="Changes">The smallest changes that would bring it among the first three suspects, each by itself, one of each kind, the least
/// first; empty where it is there or none was found.</param>
/// <param name="LookAt">The quickest checks that would find it.</param>
public sealed record WhyNotFault(
    string Fault, string Name, int? Rank, double? Probability, IReadOnlyList<ConditionDocument> Conditions, IReadOnlyList<ChangeDocument> Changes,
    IReadOnlyList<LookAtDocument> LookAt);
