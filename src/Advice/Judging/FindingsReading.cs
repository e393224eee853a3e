using Advice.Documents.Judgements;
using Advice.Findings;

namespace Advice.Judging;

/// <summary>All findings of a request, judged.</summary>
/// <param name="Judgements">What they mean, one for each, in order.</param>
/// <param name="AcrossAxles">What the difference of left and right means.</param>
/// <param name="Outcomes">What they say as evidence.</param>
/// <param name="Done">Ids of the checks that were done.</param>
public sealed record FindingsReading(
    IReadOnlyList<JudgementDocument> Judgements, IReadOnlyList<JudgementDocument> AcrossAxles, IReadOnlyList<Outcome> Outcomes,
    IReadOnlySet<string> Done);
