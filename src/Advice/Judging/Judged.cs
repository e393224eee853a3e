using Advice.Documents.Judgements;
using Advice.Findings;

namespace Advice.Judging;

/// <summary>A judged finding.</summary>
/// <param name="Document">What it means, for the answer.</param>
/// <param name="Outcome">What it says as evidence; null where it could not be judged.</param>
public sealed record Judged(JudgementDocument Document, Outcome? Outcome);
