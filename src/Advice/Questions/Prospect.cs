using Advice.Knowledge.Checks;
using Advice.Suspects;

namespace Advice.Questions;

/// <summary>What would come first if a question were answered.</summary>
/// <param name="Likeliest">The most probable of the raised suspects; null = nothing would be suspected.</param>
/// <param name="First">The first check to do; null = none.</param>
public sealed record Prospect(Suspect? Likeliest, Check? First);
