using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Suspects;

namespace Advice.Inspections;

/// <summary>How probable every fault is on a vehicle: what its age, distance and history make likely, and what the case says beyond that.</summary>
public sealed class ExpectedFaults(Catalogue catalogue)
{
    private readonly PriorOnVehicle _priors = new(catalogue);
    private readonly Fault[] _faults = [.. catalogue.Faults.Values.OrderBy(fault => fault.Id, StringComparer.Ordinal)];
    private readonly ProneRule[] _prone = [.. catalogue.Rules.Values.OfType<ProneRule>().OrderBy(rule => rule.Id, StringComparer.Ordinal)];

    /// <summary>The factors on the odds of all faults, not only of those that a sign touches, by fault, then rule.</summary>
    public IReadOnlyList<OddsFactor> Factors(Case @case) =>
    [
        .. _prone.Where(rule => Proneness.Applies(rule, @case)).SelectMany(rule => rule.Faults.Select(fault => new OddsFactor(fault, rule)))
            .OrderBy(factor => factor.Fault, StringComparer.Ordinal),
    ];

    /// <summary>Every fault that this vehicle can have, by id.</summary>
    public IReadOnlyList<Suspect> On(Case @case, CaseEvidence evidence, Suspicion suspicion)
    {
        var factors = evidence.Factors.ToLookup(factor => factor.Fault);
        var touched = suspicion.All.ToLookup(suspect => suspect.Instance.Fault.Id);
        var all = new List<Suspect>(_faults.Length);
        foreach (var fault in _faults)
        {
            if (_priors.Of(fault, @case.Vehicle, factors[fault.Id]) is > 0 and var prior)
                all.Add(Combined(fault, PriorOnVehicle.Clamp(prior), [.. touched[fault.Id]], @case));
        }

        return all;
    }

    /// <summary>A fault at all its places: those that no sign touches keep their share of the prior.</summary>
    private Suspect Combined(Fault fault, double prior, IReadOnlyList<Suspect> touched, Case @case)
    {
        var onlyIf = VehicleFit.OnlyIf(catalogue.FitsByFault[fault.Id], @case.Vehicle);
        var untouched = Math.Max(0, prior - touched.Sum(suspect => suspect.Instance.Prior));
        var links = touched.SelectMany(suspect => suspect.Instance.Links).DistinctBy(link => link.Rule);
        return new Suspect(
            new FaultInstance(fault, null, fault.Places, prior, onlyIf, [.. links]),
            Math.Min(1, untouched + touched.Sum(suspect => suspect.Probability)));
    }
}
