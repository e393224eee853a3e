using Advice.Vehicles;

namespace Advice.Steps;

/// <summary>How probably a vehicle has what checks need, reckoned once for each need.</summary>
internal sealed class NeedsOnVehicle(IReadOnlyList<Need> needs, Vehicle vehicle)
{
    private readonly double?[] _shares = new double?[needs.Count];

    /// <summary>Share of such vehicles that have it.</summary>
    /// <param name="need">Place of the need among all needs.</param>
    public double Share(int need) => _shares[need] ??= needs[need].Share(vehicle);
}
