namespace Advice.Documents;

/// <summary>Which rules gave the answer.</summary>
/// <param name="Revision">Hash of the rule files.</param>
/// <param name="Rules">Number of rules.</param>
public sealed record RuleSetStamp(string Revision, int Rules);
