using Advice.Symptoms;

namespace Advice.Rules.Tests.Words;

/// <summary>Fixed expressions have words of signs, occasions and parts and tell of none of them.</summary>
public class FixedExpressionTests
{
    private static readonly ComplaintReader Reader = new(RepositoryRules.Book.Catalogue);

    [Theory]
    [InlineData("Had a cup of tea first. The wipers judder.", "wipers-streak")]
    [InlineData("We only have tap water here. It overheats.", "overheating")]
    [InlineData("My phone went flat so I could not ring. It won't crank.", "no-crank")]
    [InlineData("I got cold feet about driving it since the brakes grind.", "brakes-grind")]
    [InlineData("When I fire up the engine there is a rattle for a second.", "start-rattle")]
    [InlineData("Since the spring the brakes squeal.", "brake-squeal")]
    [InlineData("I had to leave at the end of my shift because the clutch slips.", "clutch-slip")]
    public void Read_BesideASign_OnlyTheSign(string complaint, string symptom) =>
        Assert.Equal([symptom], Reader.Read(complaint).Reports.Where(report => report.Present).Select(report => report.Symptom));

    /// <summary>Two words are a sign in their order only.</summary>
    [Theory]
    [InlineData("I had the tyres changed in spring")]
    [InlineData("A kettle that whistles in tune is what I want")]
    public void Read_TwoWordsTurnedRound_NoSign(string text) => Assert.DoesNotContain(Reader.Read(text).Reports, report => report.Present);
}
