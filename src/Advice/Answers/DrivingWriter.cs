using Advice.Documents;
using Advice.Documents.Judgements;
using Advice.Intake;
using Advice.Knowledge;
using Advice.Knowledge.Words;

namespace Advice.Answers;

/// <summary>Whether it may be driven: the strictest of what the rules and the judgements say. Where nothing that was said tells, nobody is given leave.</summary>
internal sealed class DrivingWriter(Catalogue catalogue)
{
    /// <summary>The advice with the reasons that demand it.</summary>
    public DrivingDocument Write(CaseReading reading, Advised advised, IReadOnlyList<JudgementDocument> judgements)
    {
        var audience = advised.Case.Workshop.Reader;
        var least = reading.TellsNothing ? DrivingAdvice.Unknown : DrivingAdvice.Normal;
        var demands = advised.Driving.Select(rule => (rule.Advice, Reason: ReasonWriter.Reason(rule, audience)))
            .Concat(judgements.Where(judgement => judgement.Latest).Select(judgement => (Advice: judgement.Driving ?? DrivingAdvice.Normal, Reason: Reason(judgement, audience)))).ToList();
        var strictest = demands.Select(demand => demand.Advice).Append(least).Max();
        return new DrivingDocument(
            strictest, [.. demands.Where(demand => demand.Advice == strictest && strictest != DrivingAdvice.Normal).Select(demand => demand.Reason).DistinctBy(reason => reason.Text)]);
    }

    private ReasonDocument Reason(JudgementDocument judgement, Audience audience) => new(
        judgement.Check, catalogue.Say(audience, Sentences.FoundThere, judgement.Deficiency.ToString()!.ToLowerInvariant(), judgement.Limit), judgement.Source);
}
