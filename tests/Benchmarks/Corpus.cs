using System.Text;
using Advice;
using Advice.Documents.Requests;
using Advice.Intake;
using Advice.Rules.Cases;
using Advice.Rules.RuleSets;
using AdviceService.Requests;

namespace Benchmarks;

/// <summary>The rule set of the repository and the requests of its cases.</summary>
internal sealed class Corpus
{
    private readonly CaseReader _reader;

    public Corpus()
    {
        Book = RuleSetLoader.Load(Folder);
        var catalogue = Book.Catalogue;
        var reader = new RequestReader(catalogue);
        _reader = new CaseReader(catalogue);
        CaseFolder.Read(Folder, catalogue, (given, today) =>
        {
            if (reader.Read(given, today).Value is { } request)
            {
                Bodies.Add(Encoding.UTF8.GetBytes(given.GetRawText()));
                Requests.Add(request);
            }

            return new GivenRequest(null, [("", "not run")]);
        });
        Cases = [.. Requests.Select(request => _reader.Read(request, CaseClock.Today).Case)];
    }

    /// <summary>The folder of the rules.</summary>
    public static string Folder { get; } = Path.Combine(Root(), "rules");

    public RuleBook Book { get; }

    public List<byte[]> Bodies { get; } = [];

    public List<AdviceRequest> Requests { get; } = [];

    public IReadOnlyList<Case> Cases { get; }

    /// <summary>Cases of five reported symptoms: each takes those of the cases after it until it has five.</summary>
    public IReadOnlyList<Case> OfFiveSymptoms() =>
    [
        .. Enumerable.Range(0, Cases.Count - 10).Select(first => Cases[first] with
        {
            Reports = [.. Cases.Skip(first).SelectMany(one => one.Reports).Where(report => report.Present).DistinctBy(report => report.Symptom).Take(5)],
        }).Where(one => one.Reports.Count == 5),
    ];

    /// <summary>What an assessment asks its session: the case, the faults that it comes to suspect, the checks that it comes to advise.</summary>
    public IReadOnlyList<Asked> Asked()
    {
        var assessment = new Assessment(Book);
        return [.. Cases.Select(one => assessment.Of(one)).Select(advised => new Asked(
            advised.Case, advised.Suspicion.ByFault, [.. advised.Steps.Select(step => step.Check.Id)]))];
    }

    private static string Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "AdviceService.sln")))
                return folder.FullName;
        }

        throw new DirectoryNotFoundException("No folder above the benchmarks holds AdviceService.sln.");
    }
}
