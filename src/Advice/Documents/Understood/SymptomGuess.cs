namespace Advice.Documents.Understood;

/// <summary>A symptom that words may mean.</summary>
/// <param name="Symptom">Id of the symptom.</param>
/// <param name="Name">Its name.</param>
/// <param name="Confidence">How sure it is, 0 … 1.</param>
public sealed record SymptomGuess(string Symptom, string Name, double Confidence);
