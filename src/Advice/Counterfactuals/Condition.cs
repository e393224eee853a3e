namespace Advice.Counterfactuals;

/// <summary>One condition that speaks for a fault or check, and how it stands.</summary>
/// <param name="Rule">Id of the rule that states it, or of the check.</param>
/// <param name="Status">How it stands.</param>
/// <param name="Text">What it asks for, and what the case says.</param>
/// <param name="Parts">What it asks for one by one, each with how it stands.</param>
public sealed record Condition(string Rule, ConditionStatus Status, string Text, IReadOnlyList<ConditionPart> Parts);
