using System.Text;
using CsCheck;

namespace Advice.Tests.Symptoms;

public class ComplaintReaderPropertyTests
{
    private static readonly string[] Words =
    [
        "squeal", "clunk", "the", "brake", "brakes", "not", "no", "when", "i", "turn", "left", "highway", "check", "engine", "light", "flashing",
        "steering", "wheel", "shakes", "and", "but", ",", ".", "or", "gone", "fine", "front", "never", "stopped", "P0420", "code", "0302", "work",
        "used", "to", "until", "free", "of", "rid", "than", "once", "quit", "since", "nothing", "found", "looked", "instead", "ruled", "out", "yet",
    ];

    private static readonly Gen<string> Texts =
        Gen.Int[0, Words.Length - 1].Array[0, 40].Select(indices => string.Join(' ', indices.Select(i => Words[i])));

    [Fact]
    public void Read_AnyCharacters_AnswersWithinTheText() =>
        Gen.String.Sample(text =>
        {
            var reading = SmallVocabulary.Reader.Read(text);
            Assert.All(reading.Reports, r => Assert.InRange(r.Confidence, 0.6, 1));
            Assert.All(reading.NotUnderstood, part => Assert.NotEqual("", part));
        });

    [Theory]
    [InlineData("stopped, or squeal")]
    [InlineData("the wheel quit, any clunk")]
    [InlineData("used, or squeal")]
    public void Read_ClauseThatEndsInAVerbOfDenial_GivesAReading(string text) => Assert.NotNull(Read(text));

    [Fact]
    public void Read_UpperCase_IsTheSame() =>
        Texts.Sample(text => Assert.Equal(Read(text), Read(text.ToUpperInvariant())));

    [Fact]
    public void Read_MoreSpace_IsTheSame() =>
        Texts.Sample(text => Assert.Equal(Read(text), Read("  " + text.Replace(" ", " \t  ", StringComparison.Ordinal) + "  ")));

    [Fact]
    public void Read_Again_IsTheSame() =>
        Texts.Sample(text => Assert.Equal(Read(text), Read(text)));

    [Fact]
    public void Read_Report_QuotesTheText() =>
        Texts.Sample(text => Assert.All(
            SmallVocabulary.Reader.Read(text).Reports, r => Assert.Contains(r.Words!, text, StringComparison.Ordinal)));

    [Fact]
    public void Read_EachReport_IsUnique() =>
        Texts.Sample(text =>
        {
            var reports = SmallVocabulary.Reader.Read(text).Reports;
            Assert.Distinct(reports.Select(r => (r.Symptom, string.Join(' ', r.Occasions), r.Position, r.Present)));
        });

    [Theory]
    [InlineData("light ")]
    [InlineData("check engine ")]
    [InlineData("brake, not when ")]
    [InlineData("x")]
    [InlineData("e'")]
    public void Read_TextTwiceAsLong_TakesAboutTwiceTheWork(string pattern)
    {
        // Memory taken from the heap stands for work: unlike time it is the same on every machine.
        var text = Repeat(pattern, 5_000);
        Work(text);

        var (once, twice) = (Work(text), Work(Repeat(pattern, 10_000)));

        Assert.InRange(twice, 0, 3 * once);
    }

    private static string Read(string text)
    {
        var reading = SmallVocabulary.Reader.Read(text);
        return $"{reading.Summary()} | {string.Join(' ', reading.Codes)} | {reading.NotUnderstood.Count}";
    }

    private static string Repeat(string pattern, int length)
    {
        var text = new StringBuilder(length + pattern.Length);
        while (text.Length < length)
            text.Append(pattern);
        return text.ToString(0, length);
    }

    private static long Work(string text)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        SmallVocabulary.Reader.Read(text);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
