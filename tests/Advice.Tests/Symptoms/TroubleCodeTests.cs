namespace Advice.Tests.Symptoms;

public class TroubleCodeTests
{
    [Theory]
    [InlineData("P0420", "P0420")]
    [InlineData("it says p0420 and P0301.", "P0420 P0301")]
    [InlineData("code 0302", "P0302")]
    [InlineData("codes 0302 and 0303", "P0302 P0303")]
    [InlineData("P 0171", "P0171")]
    [InlineData("PO171", "P0171")]
    [InlineData("p0420, P0420", "P0420")]
    [InlineData("P0A80", "P0A80")]
    [InlineData("code U0100 and C1234", "U0100 C1234")]
    [InlineData("P0301-00", "P0301-00")]
    [InlineData("it says p0420:1a again", "P0420-1A")]
    [InlineData("codes P0301-11, P030212 and 0303-13", "P0301-11 P0302-12 P0303-13")]
    [InlineData("code U0100-87.", "U0100-87")]
    [InlineData("code P 0171-1a", "P0171-1A")]
    [InlineData("P0301 - 11 times", "P0301")]
    [InlineData("P0420-bank", "P0420")]
    [InlineData("P0301-P0304", "P0301 P0304")]
    [InlineData("P0420-123", "P0420")]
    [InlineData("C1500 pick-up", "")]
    [InlineData("P235/65R17", "")]
    [InlineData("P9999", "")]
    [InlineData("since 0302 this morning", "")]
    [InlineData("the code of conduct", "")]
    public void Read_Codes(string complaint, string expected)
    {
        var codes = SmallVocabulary.Reader.Read(complaint).Codes;

        Assert.Equal(expected, string.Join(' ', codes));
    }

    [Fact]
    public void Read_SentenceWithACode_IsUnderstood() =>
        Assert.Empty(SmallVocabulary.Reader.Read("The display shows P0420").NotUnderstood);
}
