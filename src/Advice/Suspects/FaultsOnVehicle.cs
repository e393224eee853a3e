using System.Collections.Immutable;
using Advice.Evidence;
using Advice.Knowledge;

namespace Advice.Suspects;

/// <summary>Faults on the vehicle of a case. What is known of each before any sign is reckoned once, and so are its instances where the same
/// signs touch it: cases that differ by one report differ in few faults.</summary>
/// <param name="faults">All faults.</param>
/// <param name="catalogue">The knowledge.</param>
/// <param name="case">The case.</param>
internal sealed class FaultsOnVehicle(NumberedFaults faults, Catalogue catalogue, Case @case)
{
    private readonly RatesOnVehicle _rates = new(faults, @case.Vehicle);
    private readonly PlaceBlocks _blocks = new(catalogue);
    private readonly Known?[] _known = new Known?[faults.All.Length];

    /// <summary>The instances of a fault that signs touch.</summary>
    /// <param name="number">Number of the fault.</param>
    /// <param name="links">Its links to the signs of the case.</param>
    /// <param name="factors">What makes faults more or less likely on this vehicle, by fault.</param>
    public IReadOnlyList<FaultInstance> Instances(int number, ImmutableArray<Link> links, Lazy<ILookup<string, OddsFactor>> factors)
    {
        var fault = faults.All[number];
        if (_known[number] is { } known)
            return known.Links.SequenceEqual(links) ? known.Instances : Instances(fault, links, known.Prior);
        var odds = _rates.Odds(fault);
        foreach (var factor in factors.Value[fault.Fault.Id])
            odds *= factor.Rule.Odds;
        var prior = _rates.Prior(fault, odds);
        if (@case.Named.Most > 0)
            prior *= @case.Named.Factor(fault.Fault.System);
        var instances = Instances(fault, links, prior);
        _known[number] = new Known(prior, links, instances);
        return instances;
    }

    private FaultInstance[] Instances(NumberedFault fault, ImmutableArray<Link> links, double prior)
    {
        var onlyIf = _rates.OnlyIf(fault);
        return [.. _blocks.Of(fault.Fault, links).Select(block => new FaultInstance(fault.Fault, block.Name, block.Places, PriorOnVehicle.Clamp(prior * block.Share), onlyIf, block.Links))];
    }

    private sealed record Known(double Prior, ImmutableArray<Link> Links, IReadOnlyList<FaultInstance> Instances);
}
