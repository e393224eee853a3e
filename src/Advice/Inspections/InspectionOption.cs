using Advice.Knowledge.Checks;
using Advice.Ranking;

namespace Advice.Inspections;

/// <summary>A check that applies to a vehicle.</summary>
/// <param name="Check">The check.</param>
/// <param name="SetUps">What it needs, one bit for each set-up of the rule set.</param>
/// <param name="Candidate">What it finds, in its own minutes.</param>
internal sealed record InspectionOption(Check Check, ulong SetUps, Candidate Candidate);
