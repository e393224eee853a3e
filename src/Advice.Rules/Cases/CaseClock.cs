namespace Advice.Rules.Cases;

/// <summary>The clock of all cases: it stands still, so that a case answers the same next year.</summary>
public sealed class CaseClock : TimeProvider
{
    /// <summary>The day of a case that names none.</summary>
    public static readonly DateOnly Today = new(2026, 3, 1);

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => new(Today, TimeOnly.MinValue, TimeSpan.Zero);
}
