namespace Advice.Documents.Counterfactuals;

/// <summary>A check that would tell.</summary>
public sealed record LookAtDocument(string Check, string Title, int Minutes);
