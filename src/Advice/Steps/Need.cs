using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Vehicles;

namespace Advice.Steps;

/// <summary>What a check needs on a vehicle with a fault.</summary>
/// <param name="Fits">What the check needs.</param>
/// <param name="Settled">What of it the fault's own existence settles, where nothing is known of it.</param>
internal sealed record Need(IReadOnlyList<FitsRule> Fits, IReadOnlyList<FitsRule> Settled)
{
    /// <summary>Share of such vehicles that have it.</summary>
    public double Share(Vehicle vehicle) => Settled.Count == 0 ? VehicleFit.Share(Fits, vehicle) : VehicleFit.Share(Fits.Where(rule => !IsSettled(rule, vehicle)), vehicle);

    private bool IsSettled(FitsRule rule, Vehicle vehicle) =>
        Settled.Contains(rule) && rule.When.Tests.All(test => test.Test(vehicle) == Truth.Unknown);
}
