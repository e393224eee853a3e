namespace Advice.Rules.Bench.Sensitivity;

/// <summary>What a variation did to the cases.</summary>
/// <param name="Name">The variation.</param>
/// <param name="Cases">How many cases there are with a step.</param>
/// <param name="Moved">The cases whose first step is another, with the step then and now; null = none.</param>
/// <param name="SameThree">Cases whose first three steps are the same checks, in any order.</param>
public sealed record Outcome(string Name, int Cases, IReadOnlyList<(string Case, string Was, string? Is)> Moved, int SameThree)
{
    /// <summary>Share of the cases whose first step stays.</summary>
    public double FirstStays => Cases == 0 ? 1 : 1 - ((double)Moved.Count / Cases);

    /// <summary>Share of the cases whose first three steps stay, in any order.</summary>
    public double ThreeStay => Cases == 0 ? 1 : (double)SameThree / Cases;
}
