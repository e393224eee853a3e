namespace Advice.Documents;

/// <summary>What to book.</summary>
/// <param name="Minutes">Time for all steps with set-ups, min.</param>
/// <param name="Lift">Whether a lift is needed.</param>
/// <param name="WithinDays">By when, days; null = at the next service.</param>
/// <param name="Skills">Systems that it touches.</param>
public sealed record AppointmentDocument(int Minutes, bool Lift, int? WithinDays, IReadOnlyList<string> Skills);
