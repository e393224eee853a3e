using Advice.Knowledge.Signs;

namespace Advice.Questions;

/// <summary>A question that would tell more.</summary>
/// <param name="Symptom">The symptom that it asks for.</param>
/// <param name="Worth">For one unit of effort: expected change of harm-weighted probability, relative to the harm suspected now; where nothing is suspected, the bits that the answer tells about the system.</param>
/// <param name="IfYes">What would come first after a yes.</param>
/// <param name="IfNo">What would come first after a no.</param>
public sealed record Question(Symptom Symptom, double Worth, Prospect IfYes, Prospect IfNo)
{
    /// <summary>The words of the complaint that may say so already; null = the complaint does not speak of it.</summary>
    public string? About { get; init; }
}
