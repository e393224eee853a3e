using Advice.Documents;
using Advice.Documents.Judgements;
using Advice.Judging;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Steps;
using Advice.Suspects;

namespace Advice.Answers;

/// <summary>One thing to inspect, with all that its reader needs.</summary>
internal sealed class StepWriter(Catalogue catalogue)
{
    private const int MostSuspects = 5;
    private const int MostReasons = 5;

    private readonly LimitChoice _limits = new(catalogue);
    private readonly CautionWriter _cautions = new(catalogue);
    private readonly BaseRateWriter _baseRates = new(catalogue);

    /// <summary>The step at that place in the list.</summary>
    public StepDocument Write(Step step, int rank, Advised advised)
    {
        var (check, audience) = (step.Check, advised.Case.Workshop.Reader);
        return new StepDocument
        {
            Rank = rank,
            Check = check.Id,
            Title = check.Title.For(audience),
            System = check.System,
            Area = check.Area.Id,
            Minutes = check.Minutes,
            DoneBy = advised.Case.Workshop.CanDo(check) ? check.DoneBy : DoneBy.Technician,
            Needs = [.. check.Needs.Select(need => need.Id)],
            Tools = check.Tools,
            OnlyIf = step.OnlyIf,
            Method = check.Method,
            Limits =
            [
                .. _limits.For(check, position: null, advised.Case)
                    .Concat(_limits.AcrossAxle(check, axle: null, advised.Case))
                    .Select(limit => new LimitDocument(limit.Text.For(audience), limit.Source.ToString())),
            ],
            Results = [.. check.Observations.Select(one => new ResultDocument(one.Id, one.Text, one.Normal))],
            Reasons = Reasons(step, advised),
            Suspects =
            [
                .. step.Suspects.Take(MostSuspects).Select(suspect => new StepSuspect(
                    suspect.Instance.Fault.Id, suspect.Instance.Fault.Name.For(audience), SuspectWriter.Rounded(suspect.Probability))),
            ],
            Cautions = _cautions.Of(check, advised),
        };
    }

    private List<ReasonDocument> Reasons(Step step, Advised advised)
    {
        List<ReasonDocument> reasons =
            [.. step.Suspects.SelectMany(suspect => Reasons(suspect, advised)).DistinctBy(reason => reason.Rule).Take(MostReasons)];
        return reasons.Count > 0 ? reasons : [_baseRates.Write(step, advised.Case.Workshop.Reader)];
    }

    /// <summary>A step looks for several faults, so that each reason has to say for which.</summary>
    private static IEnumerable<ReasonDocument> Reasons(Suspect suspect, Advised advised)
    {
        var name = suspect.Instance.Fault.Name.For(advised.Case.Workshop.Reader);
        return ReasonWriter.Write(suspect, advised).Select(reason => reason with { Text = $"{char.ToUpperInvariant(name[0])}{name[1..]}: {reason.Text}" });
    }
}
