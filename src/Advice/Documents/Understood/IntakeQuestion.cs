namespace Advice.Documents.Understood;

/// <summary>A question to the driver, to be answered with yes or no.</summary>
/// <param name="Ask">The question.</param>
/// <param name="Symptom">Id of the symptom that a yes would report.</param>
/// <param name="About">The words of the text that it is about, if any.</param>
/// <param name="IfYes">What a yes would change.</param>
/// <param name="IfNo">What a no would change.</param>
public sealed record IntakeQuestion(string Ask, string Symptom, string? About, string IfYes, string IfNo);
