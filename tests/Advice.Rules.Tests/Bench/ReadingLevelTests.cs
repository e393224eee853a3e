using Advice.Rules.Bench.Reading;

namespace Advice.Rules.Tests.Bench;

public sealed class ReadingLevelTests
{
    private const double EighthGrade = 8;
    private const double HardestOfAll = 14;

    [Theory]
    [InlineData("The cat sat on the mat.", 1, 6, 6, -1.45)]
    [InlineData("Stop. Do not drive on, and call the fire service!", 2, 10, 11, -0.66)]
    [InlineData("", 0, 0, 0, 0)]
    public void Of_Text_GradeByTheFormula(string text, int sentences, int words, int syllables, double grade)
    {
        var level = ReadingLevel.Of([text]);

        Assert.Equal(new ReadingLevel(sentences, words, syllables), level);
        Assert.Equal(grade, level.Grade, 2);
    }

    // As a dictionary divides them.
    [Theory]
    [InlineData("brake", 1)]
    [InlineData("engine", 2)]
    [InlineData("battery", 3)]
    [InlineData("table", 2)]
    [InlineData("needed", 2)]
    [InlineData("leaked", 1)]
    [InlineData("noises", 2)]
    [InlineData("tyres", 1)]
    [InlineData("temperature", 4)]
    [InlineData("catalytic", 4)]
    [InlineData("converter", 3)]
    [InlineData("the", 1)]
    public void SyllablesOf_Word_AsSpoken(string word, int syllables) => Assert.Equal(syllables, English.SyllablesOf(word));

    [Fact]
    public void OwnerTexts_OfTheRules_AreReadByAnEighthGrader() => Assert.All(OwnerTexts.Of(RepositoryRules.Book.Catalogue), kind =>
    {
        Assert.InRange(ReadingLevel.Of(kind.Texts.Select(one => one.Text)).Grade, double.NegativeInfinity, EighthGrade);
        Assert.All(kind.Texts, one => Assert.True(ReadingLevel.Of([one.Text]) is { Words: < 8 } or { Grade: < HardestOfAll }, one.Text));
    });
}
