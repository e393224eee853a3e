using System.Collections.Frozen;
using Advice.Evidence;
using Advice.Inference;
using Advice.Knowledge;

namespace Advice.Suspects;

/// <summary>From evidence to suspects: builds the noisy-OR network of a case and solves it.</summary>
public sealed class Suspecting
{
    private readonly Catalogue _catalogue;
    private readonly PlaceBlocks _blocks;
    private readonly Fault[] _faults;
    private readonly FrozenDictionary<string, int> _numbers;

    /// <summary>Suspects by a rule set.</summary>
    public Suspecting(Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        _catalogue = catalogue;
        _blocks = new(catalogue);
        _faults = [.. catalogue.Faults.Values.OrderBy(fault => fault.Id, StringComparer.Ordinal)];
        _numbers = _faults.Index().ToFrozenDictionary(one => one.Item.Id, one => one.Index);
    }

    /// <summary>The suspects of a case.</summary>
    public Suspicion Suspect(Case @case, CaseEvidence evidence) => Suspect(evidence, On(@case));

    /// <summary>What is known of faults on the vehicle of a case.</summary>
    internal FaultsOnVehicle On(Case @case) => new(_faults, _catalogue, @case);

    /// <summary>The suspects of a case on a vehicle whose faults are known.</summary>
    internal Suspicion Suspect(CaseEvidence evidence, FaultsOnVehicle vehicle)
    {
        var instances = Instances(evidence, vehicle);
        var network = new NoisyOrNetwork(
            [.. instances.Select(instance => instance.Prior)],
            [.. SignGroup.Of(evidence, _catalogue).Select(group => group.Manifest(instances))]);
        var posterior = ExactInference.Solve(network);
        return new Suspicion(
            network, [.. instances.Select((instance, i) => new Suspect(instance, posterior.Probabilities[i]))], posterior.LeftOut);
    }

    private List<FaultInstance> Instances(CaseEvidence evidence, FaultsOnVehicle vehicle)
    {
        var factors = new Lazy<ILookup<string, OddsFactor>>(() => evidence.Factors.ToLookup(factor => factor.Fault));
        var byNumber = new List<Link>?[_faults.Length];
        foreach (var link in evidence.Links)
            (byNumber[_numbers[link.Fault]] ??= []).Add(link);
        var instances = new List<FaultInstance>();
        for (var number = 0; number < byNumber.Length; number++)
        {
            if (byNumber[number] is not { } links)
                continue;
            var fault = _faults[number];
            var (prior, onlyIf) = vehicle.Of(number, factors);
            foreach (var block in _blocks.Of(fault, links))
                instances.Add(new FaultInstance(fault, block.Name, block.Places, PriorOnVehicle.Clamp(prior * block.Share), onlyIf, block.Links));
        }

        return instances;
    }
}
