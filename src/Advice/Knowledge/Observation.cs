namespace Advice.Knowledge;

/// <summary>One value of a check's closed scale.</summary>
public sealed record Observation(string Id, bool Normal, string Text);
