namespace Advice.Symptoms;

/// <summary>A symptom that words may mean, too unsure to be a report.</summary>
/// <param name="Symptom">Id of the symptom.</param>
/// <param name="Confidence">How sure it is, 0 … 1.</param>
public sealed record Guess(string Symptom, double Confidence);
