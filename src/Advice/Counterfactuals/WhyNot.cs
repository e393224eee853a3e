using Advice.Documents.Requests;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;

namespace Advice.Counterfactuals;

/// <summary>Why a fault did not come up, and the smallest changes that would bring it to the front.</summary>
public sealed class WhyNot(Catalogue catalogue)
{
    /// <summary>How many count as the front.</summary>
    internal const int Front = 3;

    private const int MostRivals = 5;

    private readonly FaultConditions _conditions = new(catalogue);
    private readonly FactChanges _facts = new(catalogue);
    private readonly SignChanges _signs = new(catalogue);
    private readonly FindingChanges _findings = new(catalogue);

    /// <summary>How the fault stands in a case that was assessed.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="request">The request.</param>
    /// <param name="advised">What was concluded from it.</param>
    /// <param name="assess">Assesses a changed request.</param>
    public FaultInCase Explain(Fault fault, AdviceRequest request, Advised advised, Func<AdviceRequest, Advised> assess)
    {
        var (rank, probability) = Standing(fault, advised);
        return new FaultInCase(
            fault, rank, rank is null ? null : probability, _conditions.Of(fault, advised),
            rank <= Front ? [] : new ChangeSearch(assess).Find(request with { Limit = 1 }, Changes(fault, advised), changed => Standing(fault, changed)), LookAt(fault, advised.Case));
    }

    /// <summary>What might bring a fault forward that this vehicle can have; nothing where it cannot.</summary>
    internal IEnumerable<Change> Changes(Fault fault, Advised advised)
    {
        var @case = advised.Case;
        if (!Exists(fault, @case))
            return [];
        var rivals = advised.Suspicion.Raised.Where(suspect => suspect.Instance.Fault.Id != fault.Id).Take(MostRivals)
            .SelectMany(suspect => catalogue.FitsByFault[suspect.Instance.Fault.Id]).Select(rule => rule.When);
        return _facts.Passing(_conditions.OnVehicle(fault.Id), @case).Concat(FactChanges.Failing(rivals, @case))
            .Concat(_signs.Of(catalogue.ShowsByFault[fault.Id], @case)).Concat(_findings.Of(fault.Id, @case));
    }

    /// <summary>Place of a fault among the suspects, and its probability there.</summary>
    internal static (int? Rank, double Probability) Standing(Fault fault, Advised advised)
    {
        for (var i = 0; i < advised.Suspicion.Raised.Count; i++)
        {
            if (advised.Suspicion.Raised[i].Instance.Fault.Id == fault.Id)
                return (i + 1, advised.Suspicion.Raised[i].Probability);
        }

        return (null, 0);
    }

    private bool Exists(Fault fault, Case @case) => catalogue.FitsByFault[fault.Id].All(rule => rule.When.Test(@case.Vehicle) != Truth.No);

    private IReadOnlyList<Check> LookAt(Fault fault, Case @case) => !Exists(fault, @case) ? [] :
    [
        .. catalogue.ChecksByFault[fault.Id].Where(check => @case.IsOpen(check) && VehicleFit.Share(catalogue.FitsByCheck[check.Id], @case.Vehicle) > 0)
            .OrderByDescending(check => check.Surely(fault.Id) / (check.Minutes + check.Needs.Sum(need => need.Minutes)))
            .ThenBy(check => check.Id, StringComparer.Ordinal).Take(Front),
    ];
}
