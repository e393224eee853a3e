namespace Advice.Documents;

/// <summary>Why.</summary>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Text">The reason.</param>
/// <param name="Source">Where it comes from; null for what a check itself says.</param>
public sealed record ReasonDocument(string Rule, string Text, string? Source);
