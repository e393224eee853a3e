namespace Advice.Documents.Judgements;

/// <summary>A limit with its source.</summary>
public sealed record LimitDocument(string Text, string Source);
