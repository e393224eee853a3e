namespace Advice.Documents;

/// <summary>A caution.</summary>
public sealed record CautionDocument(string Id, string Text);
