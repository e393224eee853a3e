using Advice.Knowledge.Limits;
using Advice.Wear;

namespace Advice.Documents.Judgements;

/// <summary>When one limit is reached.</summary>
public sealed record LimitProjectionDocument
{
    /// <summary>The limit in words.</summary>
    public required string Limit { get; init; }

    /// <summary>Its value.</summary>
    public required Amount Bound { get; init; }

    /// <summary>Its source.</summary>
    public required string Source { get; init; }

    /// <summary>Class when it is passed.</summary>
    public required Deficiency Deficiency { get; init; }

    /// <summary>What came of it.</summary>
    public required ProjectionStatus Status { get; init; }

    /// <summary>The same in a sentence.</summary>
    public required string Text { get; init; }

    /// <summary>Wear for each 1000 km, in the unit of the limit; null where there is no line.</summary>
    public double? Per1000Km { get; init; }

    /// <summary>Where the line reaches the limit.</summary>
    public CrossingDocument? Expected { get; init; }

    /// <summary>First end of the interval that holds nine of ten cases.</summary>
    public CrossingDocument? Earliest { get; init; }

    /// <summary>Last end.</summary>
    public CrossingDocument? Latest { get; init; }
}
