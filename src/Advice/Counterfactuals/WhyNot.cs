using Advice.Knowledge;
using Advice.Symptoms;

namespace Advice.Counterfactuals;

/// <summary>Why a fault did not come up, and the smallest change that would bring it to the front.</summary>
public sealed class WhyNot(Catalogue catalogue, Assessment assessment)
{
    /// <summary>How many count as the front.</summary>
    internal const int Front = 3;

    private const int MostTried = 12;

    private readonly FaultConditions _conditions = new(catalogue);

    /// <summary>How the fault stands in a case that was assessed.</summary>
    public FaultInCase Explain(Fault fault, Advised advised)
    {
        var rank = Rank(fault, advised);
        return new FaultInCase(
            fault, rank, rank is { } place ? advised.Suspicion.Raised[place - 1].Probability : null, _conditions.Of(fault, advised),
            rank <= Front ? null : SmallestChange(fault, advised.Case, 1, changed => Rank(fault, changed)), LookAt(fault, advised.Case));
    }

    /// <summary>The unspoken symptom of a fault that brings something furthest forward, if that is among the first three.</summary>
    /// <param name="fault">The fault that the symptom speaks for.</param>
    /// <param name="case">The case.</param>
    /// <param name="mostSteps">How many steps a changed case needs for the rank.</param>
    /// <param name="rank">The place that counts in a changed case.</param>
    internal Change? SmallestChange(Fault fault, Case @case, int mostSteps, Func<Advised, int?> rank)
    {
        if (catalogue.FitsByFault[fault.Id].Any(rule => rule.When.Test(@case.Vehicle) == Truth.No))
            return null;
        var spoken = @case.Reports.Select(report => report.Symptom).ToHashSet();
        return Best(_conditions.Shows(fault.Id)
            .Where(rule => rule.Sign.Kind == SignKind.Symptom && !spoken.Contains(rule.Sign.Id) && rule.When.Test(@case.Vehicle) != Truth.No)
            .DistinctBy(rule => rule.Sign.Id).Take(MostTried)
            .Select(rule => Try(fault, @case, rule, mostSteps, rank)).OfType<Change>());
    }

    /// <summary>The change that brings it furthest forward.</summary>
    internal static Change? Best(IEnumerable<Change> changes) => changes
        .OrderBy(change => change.Rank).ThenByDescending(change => Math.Round(change.Probability, 9)).ThenBy(change => change.Symptom.Id, StringComparer.Ordinal)
        .FirstOrDefault();

    private Change? Try(Fault fault, Case @case, ShowsRule rule, int mostSteps, Func<Advised, int?> rank)
    {
        var changed = assessment.Of(@case with { MostSteps = mostSteps, Reports = [.. @case.Reports, new Report(rule.Sign.Id, rule.Occasions, null, true)] });
        return rank(changed) is { } place and <= Front
            ? new Change(catalogue.Symptoms[rule.Sign.Id], rule.Occasions, place, Rank(fault, changed) is { } own ? changed.Suspicion.Raised[own - 1].Probability : 0)
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
