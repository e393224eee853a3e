namespace Advice.Tests.Arithmetic;

public class RoadworthinessTestTests
{
    private static readonly DateOnly Registered = new(2022, 3, 15);

    /// <summary>StVZO Anlage VIII 2.1: 36 months, then 24; taxis and hire cars 12. Directive 2014/45/EU, article 5: four years, then two; taxis yearly.</summary>
    [Theory]
    [InlineData("DE", "private", null, "2025-03-15")]
    [InlineData("DE", "private", "2025-04-02", "2027-04-02")]
    [InlineData("DE", "hire", null, "2023-03-15")]
    [InlineData("EU", "private", null, "2026-03-15")]
    [InlineData("EU", "private", "2026-03-01", "2028-03-01")]
    [InlineData("EU", "hire", "2025-02-28", "2026-02-28")]
    public void StvzoAnlageViiiAndDirective201445_DueDates(string law, string use, string? last, string due)
    {
        List<(string, object)> given = [("law", law), ("use", use), ("registered", Registered), ("asOf", new DateOnly(2026, 3, 1))];
        if (last is not null)
            given.Add(("lastTest", DateOnly.Parse(last, System.Globalization.CultureInfo.InvariantCulture)));

        Assert.Equal(due, Computed.By("roadworthiness-test", [.. given]).Text("due"));
    }

    /// <summary>Directive 2014/45/EU, article 5(4): an extra test from 160,000 km on, once.</summary>
    [Theory]
    [InlineData(159_999.0, 90_000.0, "later")]
    [InlineData(160_000.0, 90_000.0, "early")]
    [InlineData(160_000.0, null, "early")]
    [InlineData(180_000.0, 160_000.0, "later")]
    public void Directive201445_ExtraTestAt160000Km(double km, double? then, string verdict)
    {
        List<(string, object)> given = [("law", "EU"), ("registered", Registered), ("lastTest", new DateOnly(2025, 3, 1)), ("asOf", new DateOnly(2026, 3, 1)), ("odometer", km)];
        if (then is { } last)
            given.Add(("odometerAtLastTest", last));

        Assert.Equal(verdict, Computed.By("roadworthiness-test", [.. given]).Verdict);
    }

    [Theory]
    [InlineData("2025-03-14", "later")]
    [InlineData("2025-03-15", "due")]
    public void Test_OnItsDay_IsDue(string day, string verdict) => Assert.Equal(verdict, Computed.By(
        "roadworthiness-test", ("law", "DE"), ("registered", Registered), ("asOf", DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture))).Verdict);

    [Fact]
    public void Test_BeforeRegistration_IsRefused() => Assert.Equal("lastTest", Computed.By(
        "roadworthiness-test", ("law", "DE"), ("registered", Registered), ("lastTest", new DateOnly(2020, 1, 1)), ("asOf", Registered)).Refused!.Name);
}
