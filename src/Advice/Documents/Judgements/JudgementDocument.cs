using Advice.Knowledge;
using Advice.Knowledge.Limits;

namespace Advice.Documents.Judgements;

/// <summary>What one finding means, or how far left and right differ on an axle.</summary>
public sealed record JudgementDocument
{
    /// <summary>Id of the check.</summary>
    public required string Check { get; init; }

    /// <summary>Where; of a comparison the axle.</summary>
    public string? Position { get; init; }

    /// <summary>Whether it could be judged.</summary>
    public required bool Judged { get; init; }

    /// <summary>The class; null when it was not judged.</summary>
    public Deficiency? Deficiency { get; init; }

    /// <summary>The limit that decided, or what the observation means.</summary>
    public string? Limit { get; init; }

    /// <summary>What was measured, or the difference of the sides, in the unit of the limit; null for an observation.</summary>
    public double? Value { get; init; }

    /// <summary>Distance from the limit in its own unit; negative = beyond it.</summary>
    public double? Margin { get; init; }

    /// <summary>Unit of the limit, the value and the margin.</summary>
    public string? Unit { get; init; }

    /// <summary>Source of the limit.</summary>
    public string? Source { get; init; }

    /// <summary>What each piece of workshop arithmetic of the check makes of the finding; none where it names none or too little was given.</summary>
    public IReadOnlyList<ComputationDocument> Arithmetic { get; init; } = [];

    /// <summary>When the first limit is reached, beside the last of three readings or more that name day and distance; else null.</summary>
    public LimitProjectionDocument? Projection { get; init; }

    /// <summary>All limits that it was held against, the decisive one first.</summary>
    public IReadOnlyList<AppliedLimit> Limits { get; init; } = [];

    /// <summary>What to do about it; null when it was not judged.</summary>
    public string? Action { get; init; }

    /// <summary>Whether it may be driven with it; null when it was not judged.</summary>
    public DrivingAdvice? Driving => Deficiency is { } known ? DeficiencyWords.Driving(known) : null;

    /// <summary>Ids of the cautions for whoever puts it right; none where nothing has to be.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Whether it is the latest of its check at its place; only such ones count as evidence and decide about driving.</summary>
    public bool Latest { get; init; } = true;

    /// <summary>Members of the freeze frame whose sum the value is; none for a finding of the request.</summary>
    public IReadOnlyList<string> FromFreezeFrame { get; init; } = [];

    /// <summary>Why it was not judged, or what to bear in mind.</summary>
    public string? Note { get; init; }

    /// <summary>The same with one more thing to bear in mind.</summary>
    public JudgementDocument Noting(string sentence) => this with { Note = Note is null ? sentence : $"{Note} {sentence}" };
}
