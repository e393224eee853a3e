namespace Advice.Documents.Requests;

/// <summary>A question when a wearing part reaches its limit.</summary>
public sealed record ProjectionRequest
{
    /// <summary>The day that counts; left out = today.</summary>
    public DateOnly? AsOf { get; init; }

    /// <summary>Whose law gives the limits; left out = those of all.</summary>
    public string? Jurisdiction { get; init; }

    /// <summary>What is known of the vehicle; some limits hold for some vehicles only.</summary>
    public VehicleDescription? Vehicle { get; init; }

    /// <summary>Id of the measured check.</summary>
    public required string Check { get; init; }

    /// <summary>Where.</summary>
    public string? Position { get; init; }

    /// <summary>What was measured, at least once.</summary>
    public required IReadOnlyList<MeasurementReport> Measurements { get; init; }

    /// <summary>The value when the part was new, and when it was fitted.</summary>
    public MeasurementReport? New { get; init; }

    /// <summary>What a reading may be wrong by in nine of ten cases; needed with fewer than three readings.</summary>
    public Quantity? GaugeError { get; init; }

    /// <summary>The day on which the part was fitted; readings of the part before it are refused.</summary>
    public DateOnly? ReplacedOn { get; init; }

    /// <summary>The maker's limit, which wins over ours.</summary>
    public SuppliedLimit? Limit { get; init; }

    /// <summary>Whether a plot is wanted.</summary>
    public bool? Plot { get; init; }
}
