using Advice.Evidence;
using Advice.Knowledge;

namespace Advice.Suspects;

/// <summary>What is known of faults on the vehicle of a case before any sign. Reckoned once for each fault, and shared by cases that differ by
/// their reports alone: factors rest on vehicle and history.</summary>
/// <param name="faults">All faults by id.</param>
/// <param name="catalogue">The knowledge.</param>
/// <param name="case">The case.</param>
internal sealed class FaultsOnVehicle(Fault[] faults, Catalogue catalogue, Case @case)
{
    private readonly PriorOnVehicle _priors = new(catalogue);
    private readonly (double Prior, string? OnlyIf)?[] _known = new (double Prior, string? OnlyIf)?[faults.Length];

    /// <summary>Probability of the fault before signs, and what must be true of the vehicle for it to exist.</summary>
    /// <param name="number">Place of the fault among all faults.</param>
    /// <param name="factors">What makes faults more or less likely on this vehicle, by fault.</param>
    public (double Prior, string? OnlyIf) Of(int number, Lazy<ILookup<string, OddsFactor>> factors)
    {
        if (_known[number] is { } known)
            return known;
        var fault = faults[number];
        known = (_priors.Of(fault, @case.Vehicle, factors.Value[fault.Id]) * @case.Named.Factor(fault.System), VehicleFit.OnlyIf(catalogue.FitsByFault[fault.Id], @case.Vehicle));
        _known[number] = known;
        return known;
    }
}
