using System.Collections.Frozen;
using Advice.Evidence;
using Advice.Inference;
using Advice.Knowledge;

namespace Advice.Suspects;

/// <summary>From evidence to suspects: builds the noisy-OR network of a case and solves it.</summary>
public sealed class Suspecting
{
    private readonly Catalogue _catalogue;
    private readonly PriorOnVehicle _priors;
    private readonly PlaceBlocks _blocks;
    private readonly Fault[] _faults;
    private readonly FrozenDictionary<string, int> _numbers;

    /// <summary>Suspects by a rule set.</summary>
    public Suspecting(Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        _catalogue = catalogue;
        _priors = new(catalogue);
        _blocks = new(catalogue);
        _faults = [.. catalogue.Faults.Values.OrderBy(fault => fault.Id, StringComparer.Ordinal)];
        _numbers = _faults.Index().ToFrozenDictionary(one => one.Item.Id, one => one.Index);
    }

    /// <summary>The suspects of a case.</summary>
    public Suspicion Suspect(Case @case, CaseEvidence evidence)
    {
        var instances = Instances(@case, evidence);
        var network = new NoisyOrNetwork(
            [.. instances.Select(instance => instance.Prior)],
            [.. SignGroup.Of(evidence, _catalogue).Select(group => group.Manifest(instances))]);
        var posterior = ExactInference.Solve(network);
        return new Suspicion(
            network, [.. instances.Select((instance, i) => new Suspect(instance, posterior.Probabilities[i]))], posterior.LeftOut);
    }

    private List<FaultInstance> Instances(Case @case, CaseEvidence evidence)
    {
        var factors = evidence.Factors.ToLookup(factor => factor.Fault);
        var instances = new List<FaultInstance>();
        foreach (var (fault, links) in ByFault(evidence.Links))
        {
            var prior = _priors.Of(fault, @case.Vehicle, factors[fault.Id]) * @case.Named.Factor(fault.System);
            var onlyIf = VehicleFit.OnlyIf(_catalogue.FitsByFault[fault.Id], @case.Vehicle);
            foreach (var block in _blocks.Of(fault, links))
                instances.Add(new FaultInstance(fault, block.Name, block.Places, PriorOnVehicle.Clamp(prior * block.Share), onlyIf, block.Links));
        }

        return instances;
    }

    /// <summary>The links of each fault, faults by id.</summary>
    private IEnumerable<(Fault Fault, List<Link> Links)> ByFault(IReadOnlyList<Link> links)
    {
        var byNumber = new List<Link>?[_faults.Length];
        foreach (var link in links)
            (byNumber[_numbers[link.Fault]] ??= []).Add(link);
        for (var number = 0; number < byNumber.Length; number++)
        {
            if (byNumber[number] is { } own)
                yield return (_faults[number], own);
        }
    }
}
