using System.Text.Json;
using Advice;
using Advice.Arithmetic;
using Advice.Documents;
using Advice.Documents.Counterfactuals;
using Advice.Documents.Dues;
using Advice.Documents.Judgements;
using Advice.Documents.Requests;
using Advice.Documents.Understood;
using Advice.Evidence;
using AdviceService.Catalogues;
using AdviceService.Requests;

namespace AdviceService.Http;

/// <summary>One rule set at work: reads requests, gives advice, shows the knowledge. Safe to share between threads.</summary>
internal sealed class AdviceDesk(IRuleBook rules, TimeProvider clock)
{
    private readonly GiveAdvice _advice = new(rules, clock);
    private readonly RequestReader _reader = new(rules.Catalogue);
    private readonly RequestReader _inspections = new(rules.Catalogue) { MostSteps = InspectionRequest.MostSteps };

    private Entries? _entries;
    private CatalogueSearch? _search;

    /// <summary>The knowledge as callers read it.</summary>
    public Entries Entries => LazyInitializer.EnsureInitialized(ref _entries, () => new Entries(rules.Catalogue, rules.Revision, rules.SwitchedOff));

    /// <summary>Revision of the rule set.</summary>
    public string Revision => rules.Revision;

    /// <summary>Finds entries of the catalogue by words.</summary>
    public ReadResult<CatalogueSearchResult> Search(ReadOnlyMemory<byte> utf8Json) =>
        Answer(RequestReader.ReadSearch(utf8Json), LazyInitializer.EnsureInitialized(ref _search, () => new CatalogueSearch(Entries)).Find);

    /// <summary>Answers a request.</summary>
    public ReadResult<AdviceDocument> Answer(ReadOnlyMemory<byte> utf8Json) => Answer(_reader.Read(utf8Json, _advice.Today), _advice.To);

    /// <summary>Answers a request for an inspection.</summary>
    public ReadResult<AdviceDocument> Inspect(ReadOnlyMemory<byte> utf8Json) => Answer(_inspections.Read(utf8Json, _advice.Today), _advice.Inspect);

    /// <summary>Judges the findings of a request.</summary>
    public ReadResult<JudgementsAnswer> Judge(ReadOnlyMemory<byte> utf8Json) => Answer(_reader.Read(utf8Json, _advice.Today), _advice.Judge);

    /// <summary>Says how the service items stand.</summary>
    public ReadResult<DueAnswer> Reckon(ReadOnlyMemory<byte> utf8Json) => Answer(_reader.Read(utf8Json, _advice.Today), _advice.Reckon);

    /// <summary>Answers a line of a batch in full.</summary>
    public (JsonElement? Id, ReadResult<AdviceDocument> Answer) AnswerLine(ReadOnlyMemory<byte> utf8Json) => AnswerLine(utf8Json, _advice.To);

    /// <summary>Answers a line of a batch in the few figures by which a fleet is sorted.</summary>
    public (JsonElement? Id, ReadResult<TriageDocument> Answer) TriageLine(ReadOnlyMemory<byte> utf8Json) => AnswerLine(utf8Json, _advice.Triage);

    /// <summary>Answers a why-not question.</summary>
    public ReadResult<WhyNotDocument> WhyNot(ReadOnlyMemory<byte> utf8Json) => Answer(_reader.ReadWhyNot(utf8Json, _advice.Today), _advice.WhyNot);

    /// <summary>Reads a text, codes and findings.</summary>
    public ReadResult<IntakeDocument> Intake(ReadOnlyMemory<byte> utf8Json) => Answer(_reader.ReadIntake(utf8Json, _advice.Today), _advice.Intake);

    /// <summary>Answers when a wearing part reaches its limits.</summary>
    public ReadResult<ProjectionDocument> Project(ReadOnlyMemory<byte> utf8Json) => Answer(_reader.ReadProjection(utf8Json, _advice.Today), _advice.Project);

    /// <summary>Says what a computation gave and what it means.</summary>
    public ComputationAnswer Explain(Computation computation, Outcome outcome) => _advice.Explain(computation, outcome);

    private (JsonElement? Id, ReadResult<T> Answer) AnswerLine<T>(ReadOnlyMemory<byte> utf8Json, Func<AdviceRequest, T> answer)
        where T : class
    {
        var line = _reader.ReadLine(utf8Json, _advice.Today);
        return (line.Id, Answer(line.Request, answer));
    }

    private static ReadResult<T> Answer<TAsked, T>(ReadResult<TAsked> request, Func<TAsked, T> answer)
        where TAsked : class
        where T : class => new(request.Value is { } asked ? answer(asked) : null, request.Errors, request.Status);
}
