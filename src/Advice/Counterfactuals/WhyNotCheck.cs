using Advice.Documents.Requests;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Words;
using Advice.Steps;

namespace Advice.Counterfactuals;

/// <summary>Why a check is no step, or not an early one.</summary>
public sealed class WhyNotCheck(Catalogue catalogue, WhyNot faults)
{
    private const int MostFaults = 3;

    private readonly FaultConditions _conditions = new(catalogue);
    private readonly FactChanges _facts = new(catalogue);

    /// <summary>How the check stands in a case that was assessed.</summary>
    /// <param name="check">The check.</param>
    /// <param name="request">The request.</param>
    /// <param name="advised">What was concluded from it.</param>
    /// <param name="assess">Assesses a changed request.</param>
    public CheckInCase Explain(Check check, AdviceRequest request, Advised advised, Func<AdviceRequest, Advised> assess)
    {
        var steps = assess(request with { Limit = int.MaxValue }).Steps;
        var rank = Place(check, steps);
        return new CheckInCase(
            check, rank, [.. Conditions(check, advised)], rank <= WhyNot.Front ? [] : [.. Before(check, rank, steps, advised)], rank <= WhyNot.Front || !IsPossible(check, advised.Case) ? [] : Changes(check, request, advised, assess),
            [.. Found(check).Take(MostFaults).Select(fault => faults.Explain(fault, request, advised, assess))]);
    }

    private static IEnumerable<StepBefore> Before(Check check, int? rank, IReadOnlyList<Step> steps, Advised advised)
    {
        var raised = advised.Suspicion.Raised.Select(suspect => suspect.Instance.Fault).DistinctBy(fault => fault.Id).Where(fault => check.Surely(fault.Id) > 0).ToList();
        return steps.Take(rank - 1 ?? steps.Count).Index()
            .Select(step => new StepBefore(step.Index + 1, step.Item.Check, [.. raised.Where(fault => step.Item.Check.Surely(fault.Id) > 0)]))
            .Where(step => step.Faults.Count > 0).Take(WhyNot.Front);
    }

    private IReadOnlyList<Counterfactual> Changes(Check check, AdviceRequest request, Advised advised, Func<AdviceRequest, Advised> assess)
    {
        var changes = _facts.Passing(catalogue.FitsByCheck[check.Id].Select(rule => rule.When), advised.Case)
            .Concat(Found(check).Take(MostFaults).SelectMany(fault => faults.Changes(fault, advised)))
            .Where(change => change.Kind != ChangeKind.Finding || change.Id != check.Id);
        return new ChangeSearch(assess).Find(request with { Limit = WhyNot.Front }, changes, changed => (Place(check, changed.Steps), Likeliest(check, changed)));
    }

    private IEnumerable<Fault> Found(Check check) => check.Detects.Select(detects => detects.Fault).Distinct()
        .OrderByDescending(check.Surely).ThenBy(id => id, StringComparer.Ordinal).Select(id => catalogue.Faults[id]);

    private double Likeliest(Check check, Advised advised) => Found(check).Max(fault => WhyNot.Standing(fault, advised).Probability);

    private static int? Place(Check check, IReadOnlyList<Step> steps) =>
        steps.Index().Where(step => step.Item.Check.Id == check.Id).Select(step => (int?)(step.Index + 1)).FirstOrDefault();

    private bool IsPossible(Check check, Case @case) =>
        @case.IsOpen(check) && @case.Workshop.CanDo(check) && catalogue.FitsByCheck[check.Id].All(rule => rule.When.Test(@case.Vehicle) != Truth.No);

    private IEnumerable<Condition> Conditions(Check check, Advised advised)
    {
        var @case = advised.Case;
        foreach (var rule in catalogue.FitsByCheck[check.Id])
            yield return _conditions.Fits(rule, @case);
        if (@case.Done.Contains(check.Id) || @case.Outcomes.Any(outcome => outcome.Check == check.Id))
            yield return Failed(Sentences.CheckDone);
        if (check.ReadsCodes && @case.Codes.Count > 0)
            yield return Failed(Sentences.CodesGiven);
        if (@case.Forbids(check) is { } symptom)
            yield return Failed(Sentences.NotDoneWith, catalogue.Symptoms[symptom].Name.For(@case.Workshop.Reader));
        if (check.Needs.Any(need => need.Drives) && advised.ForbidsDriving)
            yield return Failed(Sentences.NeedsADrive);
        if (!@case.Workshop.CanDo(check))
            yield return Failed(Sentences.NotDoneHere);

        Condition Failed(Sentence why, params object?[] words) => new(check.Id, ConditionStatus.Failed, catalogue.Say(@case.Workshop.Reader, why, words), []);
    }
}
