namespace Advice.Ranking;

/// <summary>What must be arranged before a check.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Order">Its place in the order of work: on the ground, on the lift, hot, on the road.</param>
/// <param name="Minutes">Time to arrange it once, min.</param>
public sealed record WorkSetUp(string Id, int Order, int Minutes);
