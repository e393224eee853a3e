namespace Advice.Documents;

/// <summary>A change of the case.</summary>
/// <param name="Symptom">Id of the symptom that would have to be reported besides.</param>
/// <param name="Ask">The question that asks for it.</param>
/// <param name="Rank">Place of the fault that would follow.</param>
/// <param name="Probability">Its probability that would follow, to 4 decimals.</param>
public sealed record ChangeDocument(string Symptom, string Ask, int Rank, double Probability);
