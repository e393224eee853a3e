using Advice.Knowledge;

namespace Advice.Documents;

/// <summary>What whoever sorts a fleet needs to know of one vehicle.</summary>
/// <param name="Driving">Whether it may be driven.</param>
/// <param name="ExpectedHarm">Harm to be expected if nothing is done, to 4 decimals, 0 or more: over the faults that the case raised, how far
/// each rose above its base rate, times the harm of its consequence relative to a nuisance (1).</param>
/// <param name="Checks">Ids of the first three checks, best first.</param>
/// <param name="Faults">Ids of the three most probable faults.</param>
/// <param name="Minutes">Time for all steps with set-ups, min.</param>
/// <param name="Lift">Whether a lift is needed.</param>
/// <param name="WithinDays">By when, days; null = at the next service.</param>
/// <param name="Revision">Revision of the rule set.</param>
/// <param name="Overlays">Names of the overlays that had a part in this, be it by an entry that they switch off.</param>
public sealed record TriageDocument(
    DrivingAdvice Driving, double ExpectedHarm, IReadOnlyList<string> Checks, IReadOnlyList<string> Faults, int Minutes, bool Lift, int? WithinDays,
    string Revision, IReadOnlyList<string> Overlays);
