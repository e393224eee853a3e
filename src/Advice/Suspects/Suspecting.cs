using Advice.Evidence;
using Advice.Inference;
using Advice.Knowledge;

namespace Advice.Suspects;

/// <summary>From evidence to suspects: builds the noisy-OR network of a case and solves it.</summary>
public sealed class Suspecting(Catalogue catalogue)
{
    private readonly PriorOnVehicle _priors = new(catalogue);
    private readonly PlaceBlocks _blocks = new(catalogue);

    /// <summary>The suspects of a case.</summary>
    public Suspicion Suspect(Case @case, CaseEvidence evidence)
    {
        var instances = Instances(@case, evidence);
        var network = new NoisyOrNetwork(
            [.. instances.Select(instance => instance.Prior)],
            [.. SignGroup.Of(evidence, catalogue).Select(group => group.Manifest(instances))]);
        var posterior = ExactInference.Solve(network);
        return new Suspicion(
            network, [.. instances.Select((instance, i) => new Suspect(instance, posterior.Probabilities[i]))], posterior.LeftOut);
    }

    private List<FaultInstance> Instances(Case @case, CaseEvidence evidence)
    {
        var factors = evidence.Factors.ToLookup(factor => factor.Fault);
        var instances = new List<FaultInstance>();
        foreach (var links in evidence.Links.GroupBy(link => link.Fault).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            var fault = catalogue.Faults[links.Key];
            var prior = _priors.Of(fault, @case.Vehicle, factors[fault.Id]) * @case.Named.Factor(fault.System);
            var onlyIf = VehicleFit.OnlyIf(catalogue.FitsByFault[fault.Id], @case.Vehicle);
            foreach (var block in _blocks.Of(fault, [.. links]))
                instances.Add(new FaultInstance(fault, block.Name, block.Places, PriorOnVehicle.Clamp(prior * block.Share), onlyIf, block.Links));
        }

        return instances;
    }
}
