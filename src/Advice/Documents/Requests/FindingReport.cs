using Advice.Arithmetic;

namespace Advice.Documents.Requests;

/// <summary>What a check showed: a measured value or an observation.</summary>
public sealed record FindingReport
{
    /// <summary>Id of the check.</summary>
    public required string Check { get; init; }

    /// <summary>Where.</summary>
    public string? Position { get; init; }

    /// <summary>The measured value.</summary>
    public double? Value { get; init; }

    /// <summary>Its unit; required with a value.</summary>
    public string? Unit { get; init; }

    /// <summary>The value of the check's closed scale that was observed.</summary>
    public string? Observation { get; init; }

    /// <summary>The day of the finding.</summary>
    public DateOnly? On { get; init; }

    /// <summary>The distance then, km or mi.</summary>
    public Quantity? Odometer { get; init; }

    /// <summary>What else the workshop arithmetic of the check takes, such as the glycol of a coolant.</summary>
    public Given? With { get; init; }

    /// <summary>The maker's limit, which wins over ours.</summary>
    public SuppliedLimit? Limit { get; init; }
}
