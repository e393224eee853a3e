using Advice.Knowledge;
using Advice.Steps;

namespace Advice.Counterfactuals;

/// <summary>Why a check is no step, or not an early one.</summary>
public sealed class WhyNotCheck(Catalogue catalogue, Assessment assessment, WhyNot faults)
{
    private const int MostFaults = 3;

    /// <summary>How the check stands in a case that was assessed.</summary>
    public CheckInCase Explain(Check check, Advised advised)
    {
        var all = assessment.Of(advised.Case with { MostSteps = int.MaxValue }).Steps;
        var rank = Place(check, all);
        var found = check.Detects.Select(detects => detects.Fault).Distinct().OrderByDescending(check.Surely).ThenBy(id => id, StringComparer.Ordinal);
        return new CheckInCase(check, rank, [.. Conditions(check, advised)], rank <= WhyNot.Front ? null : SmallestChange(check, advised), [.. found.Take(MostFaults).Select(id => faults.Explain(catalogue.Faults[id], advised))]);
    }

    private Change? SmallestChange(Check check, Advised advised) =>
        WhyNot.Best(check.Detects.Select(detects => detects.Fault).Distinct().OrderByDescending(check.Surely).ThenBy(id => id, StringComparer.Ordinal).Take(MostFaults)
            .Select(id => faults.SmallestChange(catalogue.Faults[id], advised.Case, WhyNot.Front, changed => Place(check, changed.Steps))).OfType<Change>());

    private static int? Place(Check check, IReadOnlyList<Step> steps) =>
        steps.Index().Where(step => step.Item.Check.Id == check.Id).Select(step => (int?)(step.Index + 1)).FirstOrDefault();

    private IEnumerable<Condition> Conditions(Check check, Advised advised)
    {
        var @case = advised.Case;
        foreach (var rule in catalogue.FitsByCheck[check.Id])
            yield return FaultConditions.Fits(rule, @case);
        if (@case.Outcomes.Any(outcome => outcome.Check == check.Id))
            yield return new Condition(check.Id, ConditionStatus.Failed, "It was done: its result is among the findings.");
        if (check.ReadsCodes && @case.Codes.Count > 0)
            yield return new Condition(check.Id, ConditionStatus.Failed, "It was done: trouble codes are given.");
        if (check.Needs.Any(need => need.Drives) && advised.ForbidsDriving)
            yield return new Condition(check.Id, ConditionStatus.Failed, "It needs a drive, and the vehicle may not be driven.");
        if (!@case.Workshop.CanDo(check))
            yield return new Condition(check.Id, ConditionStatus.Failed, "It cannot be done here: it needs a technician or a lift.");
    }
}
