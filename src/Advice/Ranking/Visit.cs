namespace Advice.Ranking;

/// <summary>One stay in one area.</summary>
/// <param name="AreaOrder">Place of the area on the walk around the vehicle.</param>
/// <param name="SetUps">Ids of the set-ups that are newly arranged for it, in their order.</param>
/// <param name="Checks">Ids of the checks done there, in order.</param>
/// <param name="Minutes">Time of the checks and of the newly arranged set-ups, min.</param>
public sealed record Visit(int AreaOrder, IReadOnlyList<string> SetUps, IReadOnlyList<string> Checks, int Minutes);
