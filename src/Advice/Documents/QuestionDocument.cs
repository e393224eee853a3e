namespace Advice.Documents;

/// <summary>A question that would tell more.</summary>
/// <param name="Ask">The question, to be answered with yes or no.</param>
/// <param name="Symptom">Id of the symptom that it asks for.</param>
/// <param name="IfYes">What a yes would change.</param>
/// <param name="IfNo">What a no would change.</param>
/// <param name="Worth">For one unit of effort (1 = answered at once): expected change of harm-weighted probability, relative to what is suspected now; where nothing is, the bits that the answer tells about the system. To 4 decimals.</param>
/// <param name="About">The words of the text that may say so already, and that the question quotes, if any.</param>
public sealed record QuestionDocument(string Ask, string Symptom, string IfYes, string IfNo, double Worth, string? About = null);
