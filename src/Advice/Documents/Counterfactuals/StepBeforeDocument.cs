namespace Advice.Documents.Counterfactuals;

/// <summary>A step that finds, before another one, what that would find.</summary>
/// <param name="Rank">Its place among all steps, from 1.</param>
/// <param name="Check">Id of the check.</param>
/// <param name="Title">Its title.</param>
/// <param name="Faults">Ids of the suspects that both find, likeliest first.</param>
public sealed record StepBeforeDocument(int Rank, string Check, string Title, IReadOnlyList<string> Faults);
