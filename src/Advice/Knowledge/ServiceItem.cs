namespace Advice.Knowledge;

/// <summary>Work that is due by distance and time.</summary>
public sealed record ServiceItem(string Id, Text Name, string System, Text Because, IReadOnlyList<Interval> Intervals)
{
    /// <summary>How people name it or the part that it renews.</summary>
    public IReadOnlyList<string> Phrases { get; init; } = [];
}
