using Advice.Knowledge;
using Advice.Symptoms;

namespace Advice.Counterfactuals;

/// <summary>Why a fault did not come up, and the smallest change that would bring it to the front.</summary>
public sealed class WhyNot(Catalogue catalogue, Assessment assessment)
{
    private const int Front = 3;
    private const int MostTried = 12;

    private readonly FaultConditions _conditions = new(catalogue);

    /// <summary>How the fault stands in a case that was assessed.</summary>
    public FaultInCase Explain(Fault fault, Advised advised)
    {
        var rank = Rank(fault, advised);
        return new FaultInCase(
            fault, rank, rank is { } place ? advised.Suspicion.Raised[place - 1].Probability : null, _conditions.Of(fault, advised),
            rank <= Front ? null : SmallestChange(fault, advised), LookAt(fault, advised.Case));
    }

    /// <summary>The unspoken symptom that brings it furthest forward, if that is among the first three.</summary>
    private Change? SmallestChange(Fault fault, Advised advised)
    {
        var @case = advised.Case;
        if (catalogue.FitsByFault[fault.Id].Any(rule => rule.When.Test(@case.Vehicle) == Truth.No))
            return null;
        var spoken = @case.Reports.Select(report => report.Symptom).ToHashSet();
        return _conditions.Shows(fault.Id)
            .Where(rule => rule.Sign.Kind == SignKind.Symptom && !spoken.Contains(rule.Sign.Id) && rule.When.Test(@case.Vehicle) != Truth.No)
            .DistinctBy(rule => rule.Sign.Id).Take(MostTried)
            .Select(rule => Try(fault, @case, rule)).OfType<Change>()
            .OrderBy(change => change.Rank).ThenByDescending(change => Math.Round(change.Probability, 9)).ThenBy(change => change.Symptom.Id, StringComparer.Ordinal)
            .FirstOrDefault();
    }

    private Change? Try(Fault fault, Case @case, ShowsRule rule)
    {
        var changed = assessment.Of(@case with { MostSteps = 1, Reports = [.. @case.Reports, new Report(rule.Sign.Id, rule.Occasions, null, true)] });
        return Rank(fault, changed) is { } rank and <= Front
            ? new Change(catalogue.Symptoms[rule.Sign.Id], rank, changed.Suspicion.Raised[rank - 1].Probability)
            : null;
    }

    private IReadOnlyList<Check> LookAt(Fault fault, Case @case) =>
    [
        .. catalogue.ChecksByFault[fault.Id].Where(check => VehicleFit.Share(catalogue.FitsByCheck[check.Id], @case.Vehicle) > 0)
            .OrderByDescending(check => check.Surely(fault.Id) / (check.Minutes + check.Needs.Sum(need => need.Minutes)))
            .ThenBy(check => check.Id, StringComparer.Ordinal).Take(Front),
    ];

    private static int? Rank(Fault fault, Advised advised)
    {
        for (var i = 0; i < advised.Suspicion.Raised.Count; i++)
        {
            if (advised.Suspicion.Raised[i].Instance.Fault.Id == fault.Id)
                return i + 1;
        }

        return null;
    }
}
