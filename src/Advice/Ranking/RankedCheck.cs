namespace Advice.Ranking;

/// <summary>A check at its place in the order.</summary>
/// <param name="Id">Its id.</param>
/// <param name="HarmFound">Expected harm that it finds and that the checks before it leave unfound, in the unit of the weights.</param>
/// <param name="HarmPerMinute">The same per minute of the check, 1/min.</param>
/// <param name="Lifted">True where it stands in front because of an urgent cause and not because of its harm per minute.</param>
public sealed record RankedCheck(string Id, double HarmFound, double HarmPerMinute, bool Lifted);
