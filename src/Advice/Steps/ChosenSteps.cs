namespace Advice.Steps;

/// <summary>The steps that were chosen for a case.</summary>
/// <param name="Steps">The steps, best first.</param>
/// <param name="LeftOut">Ids of the checks that the case asks no more for or has no time for, in the same order; ranked when asked for.</param>
public sealed record ChosenSteps(IReadOnlyList<Step> Steps, Lazy<IReadOnlyList<string>> LeftOut);
