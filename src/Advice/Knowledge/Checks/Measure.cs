using Advice.Knowledge.Limits;

namespace Advice.Knowledge.Checks;

/// <summary>What a check measures.</summary>
/// <param name="Unit">The unit of the limits and of the plausible range.</param>
/// <param name="PlausibleMinimum">Smallest value that is not a slip of the pen, in that unit.</param>
/// <param name="PlausibleMaximum">Largest such value.</param>
/// <param name="GivenLimit">Class when a limit that comes with the finding is passed; null = the worst of our limits, at most major.</param>
public sealed record Measure(string Unit, double PlausibleMinimum, double PlausibleMaximum, Deficiency? GivenLimit = null);
