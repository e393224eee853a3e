namespace Advice.Documents;

/// <summary>What was reported but is no fault.</summary>
public sealed record NormalDocument(string Rule, string Text, string? Source);
