using System.Text.Json;
using Advice;
using Advice.Documents;
using Advice.Evidence;
using AdviceService.Catalogues;
using AdviceService.Requests;

namespace AdviceService.Http;

/// <summary>One rule set at work: reads requests, gives advice, shows the knowledge. Safe to share between threads.</summary>
internal sealed class AdviceDesk(IRuleBook rules, TimeProvider clock)
{
    private readonly GiveAdvice _advice = new(rules, clock);
    private readonly RequestReader _reader = new(rules.Catalogue);

    /// <summary>The knowledge as callers read it.</summary>
    public Entries Entries { get; } = new(rules.Catalogue, rules.Revision);

    /// <summary>Revision of the rule set.</summary>
    public string Revision => rules.Revision;

    /// <summary>Answers a request.</summary>
    public ReadResult<AdviceDocument> Answer(ReadOnlyMemory<byte> utf8Json) => Answer(_reader.Read(utf8Json, _advice.Today));

    /// <summary>Answers a line of a batch.</summary>
    public (JsonElement? Id, ReadResult<AdviceDocument> Answer) AnswerLine(ReadOnlyMemory<byte> utf8Json)
    {
        var line = _reader.ReadLine(utf8Json, _advice.Today);
        return (line.Id, Answer(line.Request));
    }

    /// <summary>Answers a why-not question.</summary>
    public ReadResult<WhyNotDocument> WhyNot(ReadOnlyMemory<byte> utf8Json)
    {
        var question = _reader.ReadWhyNot(utf8Json, _advice.Today);
        return new(question.Value is { } asked ? _advice.WhyNot(asked) : null, question.Errors, question.Status);
    }

    private ReadResult<AdviceDocument> Answer(ReadResult<AdviceRequest> request) =>
        new(request.Value is { } asked ? _advice.To(asked) : null, request.Errors, request.Status);
}
