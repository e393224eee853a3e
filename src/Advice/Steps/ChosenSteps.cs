namespace Advice.Steps;

/// <summary>The steps that were chosen for a case.</summary>
/// <param name="Steps">The steps, best first.</param>
/// <param name="LeftOut">How many more there are than the case asks for.</param>
public sealed record ChosenSteps(IReadOnlyList<Step> Steps, int LeftOut);
