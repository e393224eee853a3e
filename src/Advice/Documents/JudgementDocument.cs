using Advice.Knowledge;

namespace Advice.Documents;

/// <summary>What one finding means.</summary>
public sealed record JudgementDocument
{
    /// <summary>Id of the check.</summary>
    public required string Check { get; init; }

    /// <summary>Where.</summary>
    public string? Position { get; init; }

    /// <summary>Whether it could be judged.</summary>
    public required bool Judged { get; init; }

    /// <summary>The class; null when it was not judged.</summary>
    public Deficiency? Deficiency { get; init; }

    /// <summary>The limit that decided, or what the observation means.</summary>
    public string? Limit { get; init; }

    /// <summary>Distance from the limit in its own unit; negative = beyond it.</summary>
    public double? Margin { get; init; }

    /// <summary>Unit of the margin.</summary>
    public string? Unit { get; init; }

    /// <summary>Source of the limit.</summary>
    public string? Source { get; init; }

    /// <summary>What the workshop arithmetic of the check makes of the value; null where there is none.</summary>
    public ComputationDocument? Arithmetic { get; init; }

    /// <summary>When the first limit is reached, beside the last of three readings or more that name day and distance; else null.</summary>
    public LimitProjectionDocument? Projection { get; init; }

    /// <summary>Why it was not judged, or what to bear in mind.</summary>
    public string? Note { get; init; }
}
