namespace Advice.Documents.Requests;

/// <summary>A limit that the caller supplies, such as the minimum stamped on a part.</summary>
public sealed record SuppliedLimit
{
    /// <summary>Smallest good value.</summary>
    public double? Minimum { get; init; }

    /// <summary>Largest good value.</summary>
    public double? Maximum { get; init; }

    /// <summary>Its unit.</summary>
    public required string Unit { get; init; }

    /// <summary>Where it was read, in at most 200 characters.</summary>
    public string? Source { get; init; }
}
