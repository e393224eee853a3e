using Advice.Documents;
using Advice.Knowledge;

namespace Advice.Answers;

/// <summary>Whether it may be driven: the strictest of what the rules and the judgements say.</summary>
internal static class DrivingWriter
{
    /// <summary>The advice with the reasons that demand it.</summary>
    public static DrivingDocument Write(Advised advised, IReadOnlyList<JudgementDocument> judgements)
    {
        var audience = advised.Case.Workshop.Reader;
        var demands = advised.Driving.Select(rule => (rule.Advice, Reason: ReasonWriter.Reason(rule, audience)))
            .Concat(judgements.Where(judgement => judgement.Latest).Select(judgement => (judgement.Driving ?? DrivingAdvice.Normal, Reason(judgement)))).ToList();
        var strictest = demands.Select(demand => demand.Item1).DefaultIfEmpty(DrivingAdvice.Normal).Max();
        return new DrivingDocument(
            strictest, [.. demands.Where(demand => demand.Item1 == strictest && strictest != DrivingAdvice.Normal).Select(demand => demand.Item2)]);
    }

    private static ReasonDocument Reason(JudgementDocument judgement) => new(
        judgement.Check, $"What was found there is {judgement.Deficiency.ToString()!.ToLowerInvariant()}: {judgement.Limit}.", judgement.Source);
}
