namespace Advice.Documents.Requests;

/// <summary>The brakes as far as the caller knows them.</summary>
public sealed record BrakesDescription
{
    /// <summary>disc or drum.</summary>
    public string? Front { get; init; }

    /// <summary>disc or drum.</summary>
    public string? Rear { get; init; }

    /// <summary>cable or electric.</summary>
    public string? Parking { get; init; }

    /// <summary>Grade of the brake fluid: dot3, dot4, dot5 or dot51.</summary>
    public string? Fluid { get; init; }
}
