using Advice.Symptoms;

namespace Advice.Rules.Tests;

/// <summary>A part is named once and two things are said of it.</summary>
public class SharedSubjectTests
{
    private static readonly ComplaintReader Reader = new(
        RepositoryRules.Book.Catalogue.Symptoms.Values, RepositoryRules.Book.Catalogue.Occasions.Values, RepositoryRules.Book.Catalogue.Positions.Values,
        RepositoryRules.Book.Catalogue.Systems);

    [Theory]
    [InlineData("The brake pedal is soft and sinks", "pedal-sinks", "soft-pedal")]
    [InlineData("My clutch pedal is heavy and sticks to the floor", "clutch-pedal-drops", "clutch-pedal-odd")]
    [InlineData("The exhaust smokes blue and rattles", "blue-smoke", "exhaust-rattle")]
    [InlineData("The coolant is brown and low", "coolant-loss", "rusty-coolant")]
    [InlineData("the engine stalls and shakes", "rough-idle", "stalling")]
    public void Read_TwoThingsOfOnePart_BothArePresent(string text, string first, string second) =>
        Assert.Equal([(first, true), (second, true)], Read(text));

    [Theory]
    [InlineData("The brake pedal is soft and does not sink", false, true)]
    [InlineData("The brake pedal is not soft and does not sink", false, false)]
    [InlineData("The brake pedal is not soft or sinking", false, false)]
    public void Read_OneOfThemDenied_IsNotPresent(string text, bool sinks, bool soft) =>
        Assert.Equal([("pedal-sinks", sinks), ("soft-pedal", soft)], Read(text));

    [Fact]
    public void Read_TwoThingsDenied_StatesNoTrouble() => Assert.False(Reader.Read("The engine does not stall or shake").StatesTrouble);

    private static List<(string, bool)> Read(string text) =>
        [.. Reader.Read(text).Reports.Select(r => (r.Symptom, r.Present)).OrderBy(r => r.Symptom, StringComparer.Ordinal)];
}
