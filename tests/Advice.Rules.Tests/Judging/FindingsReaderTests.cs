using System.Globalization;
using Advice.Documents.Requests;
using Advice.Judging;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Signs;
using Advice.Vehicles;

namespace Advice.Rules.Tests.Judging;

public class FindingsReaderTests
{
    private static readonly FindingsReader Findings = new(RepositoryRules.Book.Catalogue);
    private static readonly Vehicle Unknown = new(new Dictionary<string, string>(), new Dictionary<string, double>());

    [Theory]
    [InlineData("brake-force", "N", "front", 3000, 2100, "EU", Deficiency.None)]
    [InlineData("brake-force", "N", "front", 3000, 2090, "EU", Deficiency.Major)]
    [InlineData("brake-force", "kN", "front", 1.4, 3, "DE", Deficiency.Dangerous)]
    [InlineData("brake-force", "N", "rear", 1400, 3000, "DE", Deficiency.Major)]
    [InlineData("brake-force", "lbf", "front", 600, 400, "UK", Deficiency.Major)]
    [InlineData("brake-force", "N", "rear", 0, 0, "US", Deficiency.None)]
    [InlineData("brake-pad-thickness", "mm", "front", 8, 5.9, "EU", Deficiency.Minor)]
    [InlineData("brake-pad-thickness", "mm", "rear", 8, 6, "EU", Deficiency.None)]
    [InlineData("tyre-tread-depth", "32nds", "rear", 8, 5, "US", Deficiency.Minor)]
    [InlineData("damper-rebound", "count", "front", 1, 3, "EU", Deficiency.Minor)]
    public void Read_BothSidesOfAnAxle_ComparesThem(string check, string unit, string axle, double left, double right, string jurisdiction, Deficiency expected)
    {
        var across = Assert.Single(Read(jurisdiction, Value(check, left, unit, $"{axle}-left"), Value(check, right, unit, $"{axle}-right")).AcrossAxles);

        Assert.Equal((check, axle, expected), (across.Check, across.Position, across.Deficiency));
    }

    [Fact]
    public void Read_OneSideOrTwoAxles_ComparesNothing() =>
        Assert.Empty(Read("EU", Value("brake-force", 3000, "N", "front-left"), Value("brake-force", 1000, "N", "rear-right")).AcrossAxles);

    [Fact]
    public void Read_SidesApart_SaysSoOfTheCheckThatTheLimitNames()
    {
        var outcomes = Read("EU", Value("brake-force", 3000, "N", "front-left"), Value("brake-force", 1000, "N", "front-right")).Outcomes;

        var outcome = Assert.Single(outcomes);
        Assert.Equal(("brake-imbalance", "front", Sign.BeyondLimit), (outcome.Check, outcome.Position, outcome.Value));
    }

    [Theory]
    [InlineData("brake-disc-thickness", 21.5, 22, "", Deficiency.Major)]
    [InlineData("brake-disc-thickness", 22, 22, "", Deficiency.None)]
    [InlineData("brake-pad-thickness", 2.5, 3, "US", Deficiency.Major)]
    [InlineData("brake-pad-thickness", 2.5, 2, "EU", Deficiency.None)]
    [InlineData("brake-pad-thickness", 1.2, 3, "UK", Deficiency.Dangerous)]
    [InlineData("battery-open-circuit-voltage", 12.4, 12.5, "", Deficiency.Minor)]
    [InlineData("tyre-pressure", 230, 240, "US", Deficiency.Minor)]
    [InlineData("tyre-pressure", 240, 240, "US", Deficiency.None)]
    public void Read_LimitOfTheCaller_WinsAndStaysInProportion(string check, double value, double minimum, string jurisdiction, Deficiency expected)
    {
        var unit = RepositoryRules.Book.Catalogue.Checks[check].Measure!.Unit;
        var given = new SuppliedLimit { Minimum = minimum, Unit = unit, Source = "stamped on the part" };

        var judgement = Read(jurisdiction, Value(check, value, unit, null) with { Limit = given }).Judgements[0];

        Assert.Equal((expected, "stamped on the part"), (judgement.Deficiency, judgement.Source));
        Assert.Equal(value - minimum, judgement.Margin!.Value, 9);
    }

    [Fact]
    public void Read_LawMetAndTradeNot_GivesBothMarginsInTheirOwnUnits()
    {
        var judgement = Read("US", Value("tyre-tread-depth", 1.59, "mm", "front-left")).Judgements[0];

        Assert.Contains("law is met", judgement.Note, StringComparison.Ordinal);
        var law = judgement.Limits.Single(limit => limit.Jurisdiction == "US");
        Assert.Equal((Deficiency.None, "in", 0.0001), (law.Deficiency, law.Unit, law.Margin));
    }

    [Fact]
    public void Read_DiameterNotKnown_SaysWhatWasTaken() =>
        Assert.Contains("We do not know", Read("US", Value("steering-free-play", 3, "in", null)).Judgements[0].Note, StringComparison.Ordinal);

    [Fact]
    public void Read_OneWheelOfFour_NamesTheOthers() => Assert.Contains(
        "front right, rear left, rear right", Read("US", Value("brake-pad-thickness", 9, "mm", "front-left")).Judgements[0].Note, StringComparison.Ordinal);

    [Fact]
    public void Read_DiscWithoutItsMinimum_IsDoneButNotJudged()
    {
        var reading = Read("EU", Value("brake-disc-thickness", 21.5, "mm", null));

        Assert.False(reading.Judgements[0].Judged);
        Assert.Empty(reading.Outcomes);
        Assert.Contains("brake-disc-thickness", reading.Done);
    }

    /// <summary>What was good last year need not be good now; what was bad then counts until it is checked again.</summary>
    [Theory]
    [InlineData(9, "2026-02-01", 1, true)]
    [InlineData(9, "2025-03-01", 0, false)]
    [InlineData(2.5, "2025-03-01", 1, false)]
    public void Read_FindingOfLastTime_IsCheckedAgain(double value, string on, int outcomes, bool done)
    {
        var reading = Read("US", Value("brake-pad-thickness", value, "mm", "front-left") with { On = DateOnly.Parse(on, CultureInfo.InvariantCulture) });

        Assert.Equal((outcomes, done), (reading.Outcomes.Count, reading.Done.Contains("brake-pad-thickness")));
        Assert.Equal(!done, reading.Judgements[0].Note!.Contains("again", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_PadsThatWereReplacedSince_OnlyTheLatestCounts()
    {
        var pad = Value("brake-pad-thickness", 0.5, "mm", "front-left");

        var reading = Read("US", pad with { On = new DateOnly(2026, 1, 10) }, pad with { On = new DateOnly(2026, 2, 10), Value = 11 });

        Assert.Equal([false, true], reading.Judgements.Select(judgement => judgement.Latest));
        Assert.Null(Assert.Single(reading.Outcomes).Value);
    }

    private static FindingsReading Read(string jurisdiction, params FindingReport[] findings) =>
        Findings.Read(findings, new Case { AsOf = new DateOnly(2026, 3, 1), Vehicle = Unknown, Jurisdiction = jurisdiction.Length == 0 ? null : jurisdiction });

    private static FindingReport Value(string check, double value, string unit, string? position) =>
        new() { Check = check, Value = value, Unit = unit, Position = position };
}
