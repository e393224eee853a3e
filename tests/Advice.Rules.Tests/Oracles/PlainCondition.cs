using Advice.Knowledge.Conditions;
using Advice.Vehicles;

namespace Advice.Rules.Tests.Oracles;

/// <summary>What rules/README.md says of conditions: all must be true; a fact that was not stated leaves them unknown.</summary>
internal static class PlainCondition
{
    public static bool IsMet(VehicleCondition when, Vehicle vehicle) => when.Tests.All(test => Test(test, vehicle) == true);

    public static bool IsRuledOut(VehicleCondition when, Vehicle vehicle) => when.Tests.Any(test => Test(test, vehicle) == false);

    /// <summary>Share of such vehicles that meet it; half of them for a number that was not stated.</summary>
    public static double Share(VehicleCondition when, Vehicle vehicle) =>
        when.Tests.Aggregate(1.0, (share, test) => share * (Test(test, vehicle) switch { true => 1, false => 0, null => Share(test) }));

    public static bool IsLikely(VehicleCondition when, Vehicle vehicle) => Share(when, vehicle) >= 0.5;

    private static double Share(FactTest test) => test.Fact.Kind == FactKind.Number ? 0.5 : test.Fact.Shares.Where(share => test.Words.Contains(share.Key)).Sum(share => share.Value);

    private static bool? Test(FactTest test, Vehicle vehicle)
    {
        if (test.Fact.Kind != FactKind.Number)
            return vehicle.Words.TryGetValue(test.Fact.Id, out var word) ? test.Words.Contains(word) : null;
        if (!vehicle.Numbers.TryGetValue(test.Fact.Id, out var number))
            return null;
        return !(number < test.AtLeast) && !(number >= test.Below);
    }
}
