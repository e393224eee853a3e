namespace Advice.Counterfactuals;

/// <summary>One thing that a rule asks for.</summary>
/// <param name="Kind">What it asks about.</param>
/// <param name="Id">Id of the fact, symptom, code or service item; of an occasion, that of its symptom.</param>
/// <param name="Status">How it stands.</param>
/// <param name="Text">What it asks for, and what the case says.</param>
public sealed record ConditionPart(ConditionKind Kind, string Id, ConditionStatus Status, string Text);
