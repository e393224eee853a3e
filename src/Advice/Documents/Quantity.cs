namespace Advice.Documents;

/// <summary>A value with its unit, as a caller gives it.</summary>
public sealed record Quantity
{
    /// <summary>The value, finite.</summary>
    public required double Value { get; init; }

    /// <summary>The unit.</summary>
    public required string Unit { get; init; }
}
