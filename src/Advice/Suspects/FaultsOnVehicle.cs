using System.Collections.Immutable;
using Advice.Evidence;
using Advice.Knowledge;

namespace Advice.Suspects;

/// <summary>Faults on the vehicle of a case. What is known of each before any sign is reckoned once, and so are its instances where the same
/// signs touch it: cases that differ by one report differ in few faults.</summary>
/// <param name="faults">All faults by id.</param>
/// <param name="catalogue">The knowledge.</param>
/// <param name="case">The case.</param>
internal sealed class FaultsOnVehicle(Fault[] faults, Catalogue catalogue, Case @case)
{
    private readonly PriorOnVehicle _priors = new(catalogue);
    private readonly PlaceBlocks _blocks = new(catalogue);
    private readonly Known?[] _known = new Known?[faults.Length];

    /// <summary>The instances of a fault that signs touch.</summary>
    /// <param name="number">Place of the fault among all faults.</param>
    /// <param name="links">Its links to the signs of the case.</param>
    /// <param name="factors">What makes faults more or less likely on this vehicle, by fault.</param>
    public IReadOnlyList<FaultInstance> Instances(int number, ImmutableArray<Link> links, Lazy<ILookup<string, OddsFactor>> factors)
    {
        var fault = faults[number];
        if (_known[number] is { } known)
            return known.Links.SequenceEqual(links) ? known.Instances : Instances(fault, links, known.Prior, known.OnlyIf);
        var prior = _priors.Of(fault, @case.Vehicle, factors.Value[fault.Id]) * @case.Named.Factor(fault.System);
        var onlyIf = VehicleFit.OnlyIf(catalogue.FitsByFault[fault.Id], @case.Vehicle);
        var instances = Instances(fault, links, prior, onlyIf);
        _known[number] = new Known(prior, onlyIf, links, instances);
        return instances;
    }

    private IReadOnlyList<FaultInstance> Instances(Fault fault, ImmutableArray<Link> links, double prior, string? onlyIf) =>
        [.. _blocks.Of(fault, links).Select(block => new FaultInstance(fault, block.Name, block.Places, PriorOnVehicle.Clamp(prior * block.Share), onlyIf, block.Links))];

    private sealed record Known(double Prior, string? OnlyIf, ImmutableArray<Link> Links, IReadOnlyList<FaultInstance> Instances);
}
