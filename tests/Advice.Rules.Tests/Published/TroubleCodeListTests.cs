using System.Text.RegularExpressions;

namespace Advice.Rules.Tests.Published;

/// <summary>Holds the meanings of trouble codes against a list of the folder that ADVICE_SHARED names.</summary>
public partial class TroubleCodeListTests
{
    // Read by hand: other words for the same thing.
    private static readonly HashSet<string> OtherWords =
        ["P202D", "P2BA9", "P0404", "P0409", "P046C", "P0780", "P0894", "U0101", "P0234", "P0299", "U0001", "U0100", "P20F4", "P20F5", "C0072"];

    private static readonly HashSet<string> Small = ["a", "of", "in", "on", "or", "and", "to", "for", "by", "at", "too", "the", "is", "not"];

    [SkippableFact]
    public void Codes_EachOne_StandsInTheListWithoutDoubt()
    {
        var listed = Listed();

        Assert.All(RepositoryRules.Book.Catalogue.Codes.Keys, code => Assert.NotEqual("differ", listed[code].SecondList));
    }

    [SkippableFact]
    public void Codes_EachMeaning_IsInOwnWordsAndSpeaksOfTheSame()
    {
        var listed = Listed();

        Assert.All(RepositoryRules.Book.Catalogue.Codes.Values, code =>
        {
            var (ours, theirs) = (code.Meaning.Trade, listed[code.Id].Meaning);
            Assert.NotEqual(theirs, ours, StringComparer.OrdinalIgnoreCase);
            Assert.True(OtherWords.Contains(code.Id) || Words(ours).Overlaps(Words(theirs)), $"{code.Id}: {ours} | {theirs}");
        });
    }

    [SkippableFact]
    public void Codes_EachNumberInAMeaning_StandsInTheListAsNumberOrLetter()
    {
        var listed = Listed();

        Assert.All(RepositoryRules.Book.Catalogue.Codes.Values, code =>
            Assert.All(Number().Matches(code.Meaning.Trade), number =>
            {
                var letter = (char)('A' + int.Parse(number.Value, System.Globalization.CultureInfo.InvariantCulture) - 1);
                Assert.Matches($@"\b({number.Value}|{letter})\b", listed[code.Id].Meaning);
            }));
    }

    private static HashSet<string> Words(string text) =>
        [.. Word().Matches(text.ToLowerInvariant()).Select(word => word.Value).Where(word => !Small.Contains(word))];

    private static Dictionary<string, (string Meaning, string SecondList)> Listed()
    {
        var folder = Environment.GetEnvironmentVariable("ADVICE_SHARED");
        Skip.If(string.IsNullOrEmpty(folder), "ADVICE_SHARED names no folder with the list of trouble codes.");
        return File.ReadLines(Path.Combine(folder, "reference", "trouble-codes.csv")).Skip(1).Select(line => Row().Match(line))
            .ToDictionary(row => row.Groups["code"].Value, row => (row.Groups["meaning"].Value.Trim('"'), row.Groups["second"].Value));
    }

    [GeneratedRegex("""^(?<code>[^,]+),(?<meaning>"[^"]*(""[^"]*)*"|[^,]*),.*,(?<second>[^,]*)$""")]
    private static partial Regex Row();

    [GeneratedRegex("[a-z0-9]+")]
    private static partial Regex Word();

    [GeneratedRegex(@"\b\d+\b")]
    private static partial Regex Number();
}
