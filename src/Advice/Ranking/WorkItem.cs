namespace Advice.Ranking;

/// <summary>A chosen check with what decides its place in the order of work.</summary>
/// <param name="Check">Id of the check.</param>
/// <param name="AreaOrder">Place of its area on the walk around the vehicle.</param>
/// <param name="Minutes">Time that the check takes, min, without set-ups.</param>
/// <param name="SetUps">What must be arranged before it.</param>
public sealed record WorkItem(string Check, int AreaOrder, int Minutes, IReadOnlyList<WorkSetUp> SetUps);
