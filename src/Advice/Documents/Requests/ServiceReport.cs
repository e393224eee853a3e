namespace Advice.Documents.Requests;

/// <summary>A service that was done.</summary>
public sealed record ServiceReport
{
    /// <summary>Id of the service item.</summary>
    public required string Item { get; init; }

    /// <summary>The day.</summary>
    public DateOnly? On { get; init; }

    /// <summary>The distance then, km or mi.</summary>
    public Quantity? Odometer { get; init; }

    /// <summary>The maker's interval, which wins over ours.</summary>
    public SuppliedInterval? Interval { get; init; }
}
