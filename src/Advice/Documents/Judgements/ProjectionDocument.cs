using Advice.Knowledge;

namespace Advice.Documents.Judgements;

/// <summary>When a wearing part reaches its limits.</summary>
public sealed record ProjectionDocument
{
    /// <summary>The day that counts.</summary>
    public required DateOnly AsOf { get; init; }

    /// <summary>The rule set that gave the limits.</summary>
    public required RuleSetStamp RuleSet { get; init; }

    /// <summary>Id of the check.</summary>
    public required string Check { get; init; }

    /// <summary>Where.</summary>
    public string? Position { get; init; }

    /// <summary>Distance driven in a day, km; null where it cannot be told.</summary>
    public double? KmPerDay { get; init; }

    /// <summary>One entry for each limit that applies, the one that is reached first in front; empty where none is known.</summary>
    public required IReadOnlyList<LimitProjectionDocument> Limits { get; init; }

    /// <summary>What to bear in mind.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>Readings, line, band and the first of the limits as a picture (SVG); null where none was asked for or nothing can be drawn.</summary>
    public string? Plot { get; init; }

    /// <summary>The check and limits that are entries of overlays, and the limits that one switched off and that would have applied.</summary>
    public required IReadOnlyList<OverlayEntry> FromOverlays { get; init; }
}
