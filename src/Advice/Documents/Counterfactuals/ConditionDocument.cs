using Advice.Counterfactuals;

namespace Advice.Documents.Counterfactuals;

/// <summary>A condition and how it stands.</summary>
/// <param name="Rule">Id of the rule that states it.</param>
/// <param name="Status">held, failed or unknown.</param>
/// <param name="Text">What it asks for, and what the case says.</param>
/// <param name="Parts">What it asks for one by one; all of it must hold.</param>
public sealed record ConditionDocument(string Rule, ConditionStatus Status, string Text, IReadOnlyList<ConditionPartDocument> Parts);
