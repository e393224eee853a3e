using Advice.Counterfactuals;

namespace Advice.Documents;

/// <summary>A condition and how it stands.</summary>
/// <param name="Rule">Id of the rule that states it.</param>
/// <param name="Status">held, failed or unknown.</param>
/// <param name="Text">What it asks for, and what the case says.</param>
public sealed record ConditionDocument(string Rule, ConditionStatus Status, string Text);
