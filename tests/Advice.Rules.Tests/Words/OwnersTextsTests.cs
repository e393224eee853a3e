using System.Globalization;
using Advice.Documents.Requests;
using Advice.Intake;
using Xunit.Abstractions;

namespace Advice.Rules.Tests.Words;

/// <summary>
/// The sentences of owners in the rules, each read as the symptom under which it stands. Reading learns from them, so that this shows what was lost again
/// and not how well an unread text is understood.
/// </summary>
public class OwnersTextsTests(ITestOutputHelper output)
{
    /// <summary>A sentence may tell of several symptoms and stands under one of them; no phrase was fitted to most of them.</summary>
    private const double LeastRight = 0.85;

    [Fact]
    public void Read_SentencesOfOwners_TheirSymptomIsPresent()
    {
        var catalogue = RepositoryRules.Book.Catalogue;
        var reader = new CaseReader(catalogue);
        var sentences = catalogue.Symptoms.Values.SelectMany(symptom => symptom.Sentences, (symptom, text) => (symptom.Id, Text: text)).ToList();

        var misread = sentences.AsParallel().AsOrdered()
            .Select(sentence => (sentence.Id, sentence.Text, Read: reader.Read(new AdviceRequest { Vehicle = new(), Complaint = sentence.Text }, CaseDay).Case.Reports.Where(report => report.Present).Select(report => report.Symptom).ToList()))
            .Where(one => !one.Read.Contains(one.Id)).ToList();

        foreach (var (id, text, read) in misread)
            output.WriteLine($"{text} | {id} | read {string.Join(' ', read)}");
        Assert.True(sentences.Count > 3000);
        Assert.True(misread.Count <= (1 - LeastRight) * sentences.Count, string.Create(CultureInfo.InvariantCulture, $"{misread.Count} of {sentences.Count} are misread."));
    }

    private static DateOnly CaseDay => new(2026, 3, 1);
}
