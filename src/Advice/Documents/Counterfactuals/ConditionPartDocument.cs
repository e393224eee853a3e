using Advice.Counterfactuals;

namespace Advice.Documents.Counterfactuals;

/// <summary>One thing that a rule asks for, and how it stands.</summary>
/// <param name="Kind">fact (of the vehicle), symptom, occasion, code, without (a symptom that must not be there) or service.</param>
/// <param name="Id">Id of the fact, symptom, code or service item; of an occasion, that of its symptom.</param>
/// <param name="Status">held, failed or unknown.</param>
/// <param name="Text">What it asks for, and what the case says.</param>
public sealed record ConditionPartDocument(ConditionKind Kind, string Id, ConditionStatus Status, string Text);
