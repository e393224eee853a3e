using Advice.Knowledge;
using Advice.Vehicles;

namespace Advice.Suspects;

/// <summary>How many faults of each system a vehicle has before any sign.</summary>
public sealed class SystemBaseRates
{
    private readonly NumberedFaults _faults;
    private readonly ILookup<string, NumberedFault> _bySystem;

    /// <summary>The base rates of a rule set.</summary>
    public SystemBaseRates(Catalogue catalogue)
    {
        _faults = new(catalogue);
        _bySystem = _faults.All.ToLookup(fault => fault.Fault.System);
    }

    /// <summary>Expected number of faults on the vehicle by system.</summary>
    public Dictionary<string, double> On(Vehicle vehicle)
    {
        var rates = new RatesOnVehicle(_faults, vehicle);
        return _bySystem.ToDictionary(system => system.Key, system => system.Sum(fault => rates.Prior(fault, rates.Odds(fault))));
    }
}
