namespace Advice.Documents.Requests;

/// <summary>A part measured on a day at a distance.</summary>
public sealed record MeasurementReport
{
    /// <summary>The measured value.</summary>
    public required double Value { get; init; }

    /// <summary>Its unit.</summary>
    public required string Unit { get; init; }

    /// <summary>The day.</summary>
    public required DateOnly On { get; init; }

    /// <summary>The distance then, km or mi.</summary>
    public required Quantity Odometer { get; init; }
}
