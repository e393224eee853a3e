namespace Advice.Arithmetic.Operators;

/// <summary>How often the law wants a vehicle tested (StVZO Anlage VIII 2.1; Directive 2014/45/EU article 5, as restated).</summary>
/// <param name="Law">The law.</param>
/// <param name="Use">What the vehicle is used for.</param>
/// <param name="FirstMonths">Months from first registration to the first test.</param>
/// <param name="LaterMonths">Months from one test to the next.</param>
public sealed record RoadworthinessTest(string Law, string Use, int FirstMonths, int LaterMonths)
{
    /// <summary>From this distance on the Directive lets a state ask for a test before the time, km.</summary>
    public const double EarlyTestKm = 160_000;

    /// <summary>The intervals that are known.</summary>
    public static IReadOnlyList<RoadworthinessTest> All { get; } =
        [new("DE", "private", 36, 24), new("DE", "hire", 12, 12), new("EU", "private", 48, 24), new("EU", "hire", 12, 12)];

    /// <summary>The day of the next test.</summary>
    /// <param name="registered">Day of the first registration.</param>
    /// <param name="last">Day of the last test; null = none yet.</param>
    public DateOnly Next(DateOnly registered, DateOnly? last) => last is { } day ? day.AddMonths(LaterMonths) : registered.AddMonths(FirstMonths);
}
