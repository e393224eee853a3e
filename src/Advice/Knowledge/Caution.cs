namespace Advice.Knowledge;

/// <summary>What can hurt people or ruin the vehicle, and how to avoid it.</summary>
public sealed record Caution(string Id, Text Text, Source Source);
