using Advice.Symptoms;

namespace Advice.Rules.Tests.Words;

/// <summary>Fixed expressions have words of signs, occasions and parts and tell of none of them.</summary>
public class FixedExpressionTests
{
    private static readonly ComplaintReader Reader = new(RepositoryRules.Book.Catalogue);

    [Theory]
    [InlineData("Had a cup of tea first. The wipers judder.", "wipers-streak")]
    [InlineData("I had a hot drink while it cooled down. It overheats.", "overheating")]
    [InlineData("My phone went flat so I could not ring. It won't crank.", "no-crank")]
    [InlineData("When I fire up the engine there is a rattle for a second.", "start-rattle")]
    [InlineData("I had to leave at the end of my shift because the clutch slips.", "clutch-slip")]
    public void Read_BesideASign_OnlyTheSign(string complaint, string symptom) =>
        Assert.Equal([symptom], Reader.Read(complaint).Reports.Where(report => report.Present).Select(report => report.Symptom));

    /// <summary>Two words are a sign in their order only.</summary>
    [Theory]
    [InlineData("I had the tyres changed in spring")]
    [InlineData("A kettle that whistles in tune is what I want")]
    public void Read_TwoWordsTurnedRound_NoSign(string text) => Assert.DoesNotContain(Reader.Read(text).Reports, report => report.Present);

    /// <summary>They say the same where the second is said of the first.</summary>
    [Theory]
    [InlineData("The pedal was hard.", "hard-pedal")]
    [InlineData("The ride is super harsh.", "harsh-ride")]
    [InlineData("There is a thump from the tyres.", "thumping")]
    public void Read_SaidOfTheFirst_Sign(string text, string symptom) => Assert.Contains(Reader.Read(text).Reports, report => report.Present && report.Symptom == symptom);
}
