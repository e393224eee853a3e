using Advice.Knowledge.Checks;
using Advice.Ranking;
using Advice.Suspects;

namespace Advice.Steps;

/// <summary>A check that is advised, and what it looks for.</summary>
/// <param name="Check">The check.</param>
/// <param name="Ranked">Its place in the ranking.</param>
/// <param name="OnlyIf">What must be true of the vehicle, where that is not known.</param>
/// <param name="Suspects">Raised suspects that it detects, heaviest first.</param>
public sealed record Step(Check Check, RankedCheck Ranked, string? OnlyIf, IReadOnlyList<Suspect> Suspects)
{
    /// <summary>What decides its place in the order of work.</summary>
    public WorkItem Work => new(
        Check.Id, Check.Area.Order, Check.Minutes, [.. Check.Needs.Select(need => new WorkSetUp(need.Id, need.Order, need.Minutes))]);
}
