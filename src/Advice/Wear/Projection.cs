using Advice.Knowledge.Words;

namespace Advice.Wear;

/// <summary>When a wearing part reaches a limit.</summary>
/// <param name="Status">What came of it.</param>
/// <param name="Because">Why, where there is nothing to project.</param>
/// <param name="Expected">Where the line reaches the limit.</param>
/// <param name="Earliest">First end of the interval.</param>
/// <param name="Latest">Last end.</param>
public sealed record Projection(ProjectionStatus Status, Saying? Because, Crossing? Expected, Crossing? Earliest, Crossing? Latest)
{
    /// <summary>No projection, and why.</summary>
    public static Projection None(ProjectionStatus status, Saying because) => new(status, because, null, null, null);
}
