using Advice.Knowledge;
using Advice.Knowledge.Checks;

namespace Advice.Counterfactuals;

/// <summary>A step that finds, before another one, what that would find.</summary>
/// <param name="Rank">Its place, from 1.</param>
/// <param name="Check">The check.</param>
/// <param name="Faults">The suspects that both find, likeliest first.</param>
public sealed record StepBefore(int Rank, Check Check, IReadOnlyList<Fault> Faults);
