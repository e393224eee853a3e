using System.Text.RegularExpressions;
using Advice.Symptoms;

namespace Advice.Rules.Tests;

/// <summary>Hostile, long and empty texts: nothing throws, and the work grows as the text does. What is allocated stands for work, since it does not depend on the machine.</summary>
public class BoundedReadingTests
{
    private const int Longest = 10_000;
    private const int Shorter = Longest / 4;

    /// <summary>Four times the text may cost so many times as much; twice as much for each doubling would be sixteen times.</summary>
    private const double MostGrowth = 6;

    private static readonly ComplaintReader Reader = new(
        RepositoryRules.Book.Catalogue.Symptoms.Values, RepositoryRules.Book.Catalogue.Occasions.Values, RepositoryRules.Book.Catalogue.Positions.Values,
        RepositoryRules.Book.Catalogue.Systems, RepositoryRules.Book.Catalogue.Services.Values, RepositoryRules.Book.Catalogue.Topics);

    public static TheoryData<string> Pieces { get; } =
    [
        "brake ", "not ", "no squeal or ", "squeal until ", "it squeals. ", "squeal, ", "the squeal and the clunk ", "any ", "could ", "hardly ever squeals any more ", "x", "(", "((a", ".", ",,,", "''", "a'b", "a/c/",
        "\n", "\r\n\t", "\0", "\u0001\u001b[31m", "\u202e\u200f", "\ud83d\ude97 ", "é", "p0", "P0420 ", "12.5.", "-", " - ", "aaaaab", "when i brake and ", "front left ", "last week ", "replaced the pads ",
        "The brakes grind when I stop and the car pulls to the left. ", "ignore all previous instructions ", "<noise> ", "{0} ", "%s%n", "'; drop table x; -- ",
        "b\u0300\u0336\u0489\u035c", "brake\u0334\u0321\u031c ", "\"'“‘", "\\\"", "\u05d1\u05dc\u05de\u05d9\u05dd \u202b", "\ud83d\udc68\u200d\ud83d\udd27\ufe0f", "P0301-1A ", "p0:", "donaudampfschiff",
    ];

    [Theory]
    [MemberData(nameof(Pieces))]
    public void Read_AnyPieceRepeated_WorkGrowsAsTheText(string piece)
    {
        var (shorter, longer) = (Repeated(piece, Shorter), Repeated(piece, Longest));
        Reader.Read(shorter);

        Assert.InRange(Work(longer), 0, MostGrowth * Math.Max(Work(shorter), 1 << 16));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("\0\0\0")]
    [InlineData("\r\n\r\n")]
    [InlineData("....")]
    public void Read_NothingSaid_NothingRead(string text)
    {
        var reading = Reader.Read(text);

        Assert.Empty(reading.Reports);
        Assert.Empty(reading.Codes);
        Assert.Empty(reading.Mentions);
        Assert.Empty(reading.Services);
    }

    [Theory]
    [InlineData('\0')]
    [InlineData('\u0007')]
    [InlineData('\u001b')]
    [InlineData('\u200b')]
    [InlineData('\ufeff')]
    public void Read_ControlCharacterBetweenWords_SeparatesThemAsASpaceDoes(char control) => Assert.Equal(
        Reader.Read("the brakes grind when braking").Reports.Select(report => report.Symptom),
        Reader.Read($"the{control}brakes{control}grind{control}when{control}braking").Reports.Select(report => report.Symptom));

    /// <summary>A pattern that may try again and again takes time that grows with the power of the text.</summary>
    [Fact]
    public void Regexes_OfTheReader_AreFewAndPlain()
    {
        var patterns = typeof(ComplaintReader).Assembly.GetTypes()
            .SelectMany(type => type.GetMethods(System.Reflection.BindingFlags.Static | System.Reflection.BindingFlags.NonPublic | System.Reflection.BindingFlags.Public))
            .Where(method => method.ReturnType == typeof(Regex) && method.DeclaringType!.Namespace == typeof(ComplaintReader).Namespace && method.GetParameters().Length == 0)
            .Select(method => (Regex)method.Invoke(null, null)!).ToList();

        Assert.All(patterns, pattern => Assert.NotNull(new Regex(pattern.ToString(), pattern.Options | RegexOptions.NonBacktracking)));
        Assert.All(patterns, pattern => Assert.DoesNotMatch(@"[+*}]\)[+*{]", pattern.ToString()));
    }

    private static string Repeated(string piece, int length) => string.Concat(Enumerable.Repeat(piece, (length / piece.Length) + 1))[..length];

    private static double Work(string text)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        Reader.Read(text);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
