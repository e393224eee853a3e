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

    /// <summary>What to do about it; null when it was not judged.</summary>
    public string? Action { get; init; }

    /// <summary>Why it was not judged, or what to bear in mind.</summary>
    public string? Note { get; init; }
}
