using Advice.Rules.Bench;
using Advice.Rules.Bench.Drivers;

namespace Advice.Rules.Tests.Bench;

public sealed class InterviewTests
{
    private const int Most = 5;

    private static readonly Assessment Assessment = new(RepositoryRules.Book);

    private static readonly IReadOnlyList<Driver> Drivers =
        [.. new DriverDraw(RepositoryRules.Book, SampleVehicles.All.Select(one => SampleVehicles.Case(one.Vehicle, new DateOnly(2026, 3, 1)))).Draw(300, seed: 7)];

    [Fact]
    public void Over_OurOrder_FindsTheFaultSoonerThanAListOrChance()
    {
        var catalogue = RepositoryRules.Book.Catalogue;
        var ours = Curve(new MostTelling(catalogue, Assessment));
        var others = new[] { Listed.CommonestFirst(catalogue), Listed.AtRandom(catalogue, 7) }.Select(Curve).ToList();

        Assert.All(others, other => Assert.Equal(ours.Shares[0], other.Shares[0]));
        Assert.All(others, other => Assert.True(ours.MeanQuestions < other.MeanQuestions, $"{ours} {other}"));
        Assert.All(others, other => Assert.True(ours.Shares[Most] > other.Shares[Most], $"{ours} {other}"));
    }

    [Fact]
    public void Draw_SameSeed_SameDrivers()
    {
        var draw = new DriverDraw(RepositoryRules.Book, [SampleVehicles.Case(SampleVehicles.All[1].Vehicle, new DateOnly(2026, 3, 1))]);

        Assert.Equal(draw.Draw(20, 3).Select(Described), draw.Draw(20, 3).Select(Described));
        Assert.NotEqual(draw.Draw(20, 3).Select(Described), draw.Draw(20, 4).Select(Described));
    }

    [Fact]
    public void Draw_Driver_ReportsWhatTheFaultShowsOnThatVehicle() => Assert.All(Drivers, driver =>
    {
        var reported = Assert.Single(driver.Case.Reports);
        Assert.Contains(reported.Symptom, driver.Noticed);
        Assert.Contains(RepositoryRules.Book.Catalogue.ShowsBySign[Advice.Knowledge.Signs.Sign.Symptom(reported.Symptom)], rule => rule.Fault == driver.Fault);
    });

    private static string Described(Driver driver) => $"{driver.Fault} {driver.Case.Reports[0].Symptom} {string.Join(',', driver.Noticed.Order(StringComparer.Ordinal))}";

    private static InterviewCurve Curve(IAskingOrder order) => InterviewCurve.Over(Drivers, order, Assessment, Most);
}
