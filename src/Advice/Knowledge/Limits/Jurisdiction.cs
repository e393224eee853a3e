namespace Advice.Knowledge.Limits;

/// <summary>Whose law applies.</summary>
public sealed record Jurisdiction(string Id, string Name, string? Within);
