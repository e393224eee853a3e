using Advice.Knowledge;

namespace Advice.Suspects;

/// <summary>A fault with the numbers of what others share with it.</summary>
/// <param name="Fault">The fault.</param>
/// <param name="Odds">Its odds at its base rate.</param>
/// <param name="Ageing">Number of the way in which it ages.</param>
/// <param name="Fits">Number of what it needs to exist.</param>
internal sealed record NumberedFault(Fault Fault, double Odds, int Ageing, int Fits);
