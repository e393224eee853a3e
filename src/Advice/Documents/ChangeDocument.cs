namespace Advice.Documents;

/// <summary>A change of the case.</summary>
/// <param name="Symptom">Id of the symptom that would have to be reported besides.</param>
/// <param name="Occasions">Ids of the occasions with which it would have to be reported; empty = none.</param>
/// <param name="Ask">The question that asks for it.</param>
/// <param name="Rank">Place of the fault or check that would follow.</param>
/// <param name="Probability">Probability of the fault that would follow, to 4 decimals.</param>
public sealed record ChangeDocument(string Symptom, IReadOnlyList<string> Occasions, string Ask, int Rank, double Probability);
