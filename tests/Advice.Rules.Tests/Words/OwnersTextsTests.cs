using System.Globalization;
using System.Text.Json;
using Advice.Documents;
using Advice.Intake;
using Xunit.Abstractions;

namespace Advice.Rules.Tests.Words;

/// <summary>
/// What authors of rules wrote as owners would, before they looked at the phrases, with what any mechanic reads in it. Phrases were mended by most of them
/// since, so that they show what was lost again and not how well an unread text is understood.
/// </summary>
public class OwnersTextsTests(ITestOutputHelper output)
{
    private const double LeastRight = 0.95;
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    [Fact]
    public void Read_TextsOfOwners_OneOfTheMeantSymptomsIsPresent()
    {
        var catalogue = RepositoryRules.Book.Catalogue;
        var reader = new CaseReader(catalogue);
        var texts = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Words", "owners.jsonl")).Select(line => JsonSerializer.Deserialize<Owned>(line, Json)!).ToList();

        var unknown = texts.SelectMany(text => text.Expect).Distinct().Where(id => !catalogue.Symptoms.ContainsKey(id));
        var misread = texts.AsParallel().AsOrdered()
            .Select(text => (Text: text, Read: reader.Read(new AdviceRequest { Vehicle = new(), Complaint = text.Text }, CaseDay).Case.Reports.Where(report => report.Present).Select(report => report.Symptom).ToList()))
            .Where(one => !one.Text.Expect.Any(one.Read.Contains)).ToList();

        foreach (var (text, read) in misread)
            output.WriteLine($"{text.Text} | meant {string.Join(' ', text.Expect)} | read {string.Join(' ', read)}");
        Assert.Empty(unknown);
        Assert.True(misread.Count <= (1 - LeastRight) * texts.Count, string.Create(CultureInfo.InvariantCulture, $"{misread.Count} of {texts.Count} are misread."));
    }

    private static DateOnly CaseDay => new(2026, 3, 1);

    private sealed record Owned(string Text, IReadOnlyList<string> Expect);
}
