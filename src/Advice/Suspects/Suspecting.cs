using System.Collections.Immutable;
using Advice.Evidence;
using Advice.Inference;
using Advice.Knowledge;

namespace Advice.Suspects;

/// <summary>From evidence to suspects: builds the noisy-OR network of a case and solves it.</summary>
public sealed class Suspecting
{
    private readonly Catalogue _catalogue;
    private readonly NumberedFaults _faults;

    /// <summary>Suspects by a rule set.</summary>
    public Suspecting(Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        _catalogue = catalogue;
        _faults = new NumberedFaults(catalogue);
    }

    /// <summary>The suspects of a case.</summary>
    public Suspicion Suspect(Case @case, CaseEvidence evidence) => Suspect(evidence, On(@case));

    /// <summary>The faults on the vehicle of a case.</summary>
    internal FaultsOnVehicle On(Case @case) => new(_faults, _catalogue, @case);

    /// <summary>The suspects of a case on a vehicle of which some is known.</summary>
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
        var instances = new List<FaultInstance>(evidence.Links.Count);
        foreach (var (number, links) in ByFault(evidence.Links))
            instances.AddRange(vehicle.Instances(number, links, factors));
        return instances;
    }

    /// <summary>Links by the number of their fault; those of one fault in the order in which they were given.</summary>
    private IEnumerable<(int Number, ImmutableArray<Link> Links)> ByFault(IReadOnlyList<Link> links)
    {
        var byNumber = new ImmutableArray<Link>.Builder?[_faults.All.Length];
        foreach (var link in links)
            (byNumber[_faults.NumberOf(link.Fault)] ??= ImmutableArray.CreateBuilder<Link>(1)).Add(link);
        for (var number = 0; number < byNumber.Length; number++)
        {
            if (byNumber[number] is { } own)
                yield return (number, own.DrainToImmutable());
        }
    }
}
