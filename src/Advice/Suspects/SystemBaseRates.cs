using Advice.Knowledge;
using Advice.Vehicles;

namespace Advice.Suspects;

/// <summary>How many faults of each system a vehicle has before any sign. Hundreds of faults share a few ways to age and a few conditions
/// to exist, so that each of those is reckoned once for a vehicle; fault by fault <see cref="PriorOnVehicle"/> says the same.</summary>
public sealed class SystemBaseRates
{
    private readonly Ageing[] _ageings;
    private readonly FitsRule[][] _fits;
    private readonly (string System, (double Odds, int Ageing, int Fits)[] Faults)[] _systems;

    /// <summary>The base rates of a rule set.</summary>
    public SystemBaseRates(Catalogue catalogue)
    {
        var fits = catalogue.Faults.Keys.Select(fault => catalogue.FitsByFault[fault].ToArray()).DistinctBy(Key).ToArray();
        var (placeOfFits, placeOfAgeing) = (fits.Index().ToDictionary(one => Key(one.Item), one => one.Index), new Dictionary<Ageing, int>());
        foreach (var fault in catalogue.Faults.Values)
            placeOfAgeing.TryAdd(fault.Ageing, placeOfAgeing.Count);
        (_fits, _ageings) = (fits, [.. placeOfAgeing.OrderBy(one => one.Value).Select(one => one.Key)]);
        _systems =
        [
            .. catalogue.Faults.Values.GroupBy(fault => fault.System).Select(group => (group.Key, group.Select(
                fault => (fault.Prior / (1 - fault.Prior), placeOfAgeing[fault.Ageing], placeOfFits[Key(catalogue.FitsByFault[fault.Id])])).ToArray())),
        ];
    }

    /// <summary>Expected number of faults on the vehicle by system.</summary>
    public Dictionary<string, double> On(Vehicle vehicle)
    {
        var (km, years) = (vehicle.Number(Vehicle.OdometerKm), vehicle.Number(Vehicle.AgeYears));
        var factors = Array.ConvertAll(_ageings, ageing => ageing.Factor(km, years));
        var shares = Array.ConvertAll(_fits, fits => VehicleFit.Share(fits, vehicle));
        var expected = new Dictionary<string, double>(_systems.Length);
        foreach (var (system, faults) in _systems)
        {
            var sum = 0.0;
            foreach (var fault in faults)
            {
                var odds = fault.Odds * factors[fault.Ageing];
                sum += odds / (1 + odds) * shares[fault.Fits];
            }

            expected[system] = sum;
        }

        return expected;
    }

    private static string Key(IEnumerable<FitsRule> fits) => string.Join(' ', fits.Select(rule => string.Join('&', rule.When.Tests.Select(Key))));

    private static string Key(FactTest test) => $"{test.Fact.Id}:{string.Join('|', test.Words)}:{test.AtLeast}:{test.Below}";
}
