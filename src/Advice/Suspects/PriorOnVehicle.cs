using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Vehicles;

namespace Advice.Suspects;

/// <summary>Probability of a fault on this vehicle before any sign.</summary>
public sealed class PriorOnVehicle(Catalogue catalogue)
{
    private const double Smallest = 1e-5;
    private const double Largest = 0.5;

    /// <summary>Base rate, with factors on its odds for age, distance and history, times the share of vehicles that can have it.</summary>
    public double Of(Fault fault, Vehicle vehicle, IEnumerable<OddsFactor> factors)
    {
        var odds = fault.Prior / (1 - fault.Prior)
            * fault.Ageing.Factor(vehicle.Number(Vehicle.OdometerKm), vehicle.Number(Vehicle.AgeYears));
        foreach (var factor in factors)
            odds *= factor.Rule.Odds;
        return odds / (1 + odds) * VehicleFit.Share(catalogue.FitsByFault[fault.Id], vehicle);
    }

    /// <summary>Keeps a prior where neither certainty nor rounding rules.</summary>
    public static double Clamp(double prior) => Math.Clamp(prior, Smallest, Largest);
}
