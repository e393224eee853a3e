using Advice.Documents.Judgements;
using Advice.Knowledge.Checks;

namespace Advice.Documents;

/// <summary>One thing to inspect.</summary>
public sealed record StepDocument
{
    /// <summary>Place in the list, from 1.</summary>
    public required int Rank { get; init; }

    /// <summary>Id of the check.</summary>
    public required string Check { get; init; }

    /// <summary>What to do.</summary>
    public required string Title { get; init; }

    /// <summary>Id of the system.</summary>
    public required string System { get; init; }

    /// <summary>Id of the area.</summary>
    public required string Area { get; init; }

    /// <summary>Time without set-up, min.</summary>
    public required int Minutes { get; init; }

    /// <summary>Who can do it.</summary>
    public required DoneBy DoneBy { get; init; }

    /// <summary>Ids of the set-ups that it needs.</summary>
    public required IReadOnlyList<string> Needs { get; init; }

    /// <summary>Tools.</summary>
    public required IReadOnlyList<string> Tools { get; init; }

    /// <summary>What must be true of the vehicle for this step to make sense, where that is not known.</summary>
    public string? OnlyIf { get; init; }

    /// <summary>What to do, in order.</summary>
    public required IReadOnlyList<string> Method { get; init; }

    /// <summary>Limits of a measured check.</summary>
    public required IReadOnlyList<LimitDocument> Limits { get; init; }

    /// <summary>What can be seen, for an observed check.</summary>
    public required IReadOnlyList<ResultDocument> Results { get; init; }

    /// <summary>Why this step.</summary>
    public required IReadOnlyList<ReasonDocument> Reasons { get; init; }

    /// <summary>What it looks for.</summary>
    public required IReadOnlyList<StepSuspect> Suspects { get; init; }

    /// <summary>Ids of its cautions.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }
}
