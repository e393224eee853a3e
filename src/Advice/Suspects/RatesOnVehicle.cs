using Advice.Knowledge.Conditions;
using Advice.Vehicles;

namespace Advice.Suspects;

/// <summary>How probable faults are on a vehicle before any sign. What many of them share is reckoned once; fault by fault
/// <see cref="PriorOnVehicle"/> says the same.</summary>
internal sealed class RatesOnVehicle(NumberedFaults faults, Vehicle vehicle)
{
    private readonly double? _km = vehicle.Number(Vehicle.OdometerKm);
    private readonly double? _years = vehicle.Number(Vehicle.AgeYears);
    private readonly double?[] _ageing = new double?[faults.Ageings.Count];
    private readonly (double Share, string? OnlyIf)?[] _fits = new (double, string?)?[faults.Fits.Count];

    /// <summary>Odds of a fault at its base rate, for age and distance.</summary>
    public double Odds(NumberedFault fault) => fault.Odds * (_ageing[fault.Ageing] ??= faults.Ageings[fault.Ageing].Factor(_km, _years));

    /// <summary>Its probability at such odds, for the share of vehicles that can have it.</summary>
    public double Prior(NumberedFault fault, double odds) => odds / (1 + odds) * Fits(fault).Share;

    /// <summary>What must be true of the vehicle for the fault to exist, where that is not known.</summary>
    public string? OnlyIf(NumberedFault fault) => Fits(fault).OnlyIf;

    private (double Share, string? OnlyIf) Fits(NumberedFault fault) => _fits[fault.Fits] ??=
        (VehicleFit.Share(faults.Fits[fault.Fits], vehicle), VehicleFit.OnlyIf(faults.Fits[fault.Fits], vehicle));
}
