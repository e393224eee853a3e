using Advice.Knowledge.Conditions;
using Advice.Vehicles;

namespace Advice.Rules.Bench.Probes;

/// <summary>Vehicles of which no more is known than conditions ask for.</summary>
internal static class ProbeVehicles
{
    /// <summary>A vehicle that meets all of these tests; null where none can.</summary>
    public static Vehicle? Meeting(IReadOnlyCollection<FactTest> tests)
    {
        var vehicle = Vehicle.Unknown;
        foreach (var fact in tests.GroupBy(test => test.Fact))
        {
            var met = Values(fact.Key, fact).Select(value => With(vehicle, fact.Key, value)).FirstOrDefault(one => fact.All(test => test.Test(one) == Truth.Yes));
            if (met is null)
                return null;
            vehicle = met;
        }

        return vehicle;
    }

    /// <summary>The vehicle with one of these facts left open.</summary>
    public static IEnumerable<Vehicle> Opened(Vehicle vehicle, IEnumerable<FactTest> tests) =>
        tests.Select(test => test.Fact.Id).Distinct().Select(fact => Without(vehicle, fact));

    /// <summary>The vehicle with one of these facts at another value.</summary>
    public static IEnumerable<Vehicle> Changed(Vehicle vehicle, IEnumerable<FactTest> tests) =>
        tests.GroupBy(test => test.Fact).SelectMany(fact => Values(fact.Key, fact).Select(value => With(vehicle, fact.Key, value)));

    /// <summary>Values of words; of a number those at and beside the bounds.</summary>
    private static IEnumerable<object> Values(VehicleFact fact, IEnumerable<FactTest> tests)
    {
        if (fact.Kind == FactKind.Truth)
            return ["true", "false"];
        if (fact.Kind == FactKind.Word)
            return fact.Values.Keys.Order(StringComparer.Ordinal);
        return tests.SelectMany(test => new[] { test.AtLeast, test.AtLeast - 1, test.AtLeast / 2, test.Below - 1, test.Below / 2, test.Below, (test.AtLeast + test.Below) / 2 })
            .Where(number => number >= 0).Distinct().Select(number => (object)number!.Value);
    }

    private static Vehicle With(Vehicle vehicle, VehicleFact fact, object value)
    {
        var rest = Without(vehicle, fact.Id);
        return value is string word
            ? rest with { Words = new Dictionary<string, string>(rest.Words) { [fact.Id] = word } }
            : rest with { Numbers = new Dictionary<string, double>(rest.Numbers) { [fact.Id] = (double)value } };
    }

    private static Vehicle Without(Vehicle vehicle, string fact) => new(
        vehicle.Words.Where(one => one.Key != fact).ToDictionary(), vehicle.Numbers.Where(one => one.Key != fact).ToDictionary());
}
