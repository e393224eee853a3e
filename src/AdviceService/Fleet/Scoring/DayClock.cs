namespace AdviceService.Fleet.Scoring;

/// <summary>A clock that stands at the day for which a fleet is scored, so that a run that is taken up the next day goes on the same.</summary>
internal sealed class DayClock(DateOnly day) : TimeProvider
{
    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => new(day, TimeOnly.MinValue, TimeSpan.Zero);
}
