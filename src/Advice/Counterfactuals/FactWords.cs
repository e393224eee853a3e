using System.Globalization;
using Advice.Knowledge;
using Advice.Vehicles;

namespace Advice.Counterfactuals;

/// <summary>Facts of a vehicle in words.</summary>
internal static class FactWords
{
    /// <summary>Each test of a condition, and what is known of the fact.</summary>
    public static IEnumerable<ConditionPart> Parts(VehicleCondition when, Vehicle vehicle) => when.Tests.Select(test => new ConditionPart(
        ConditionKind.Fact, test.Fact.Id, Status(test.Test(vehicle)), $"{test.Fact.Name}: {Asked(test)} ({Stated(test.Fact, vehicle)})"));

    /// <summary>A value of a fact.</summary>
    public static string Value(VehicleFact fact, string word) =>
        fact.Values.TryGetValue(word, out var name) ? name : word switch { "true" => "yes", "false" => "no", _ => word };

    /// <summary>How an answer stands as a condition.</summary>
    public static ConditionStatus Status(Truth truth) => truth switch
    {
        Truth.Yes => ConditionStatus.Held,
        Truth.No => ConditionStatus.Failed,
        _ => ConditionStatus.Unknown,
    };

    private static string Asked(FactTest test) => test.Fact.Kind != FactKind.Number
        ? string.Join(" or ", test.Words.Select(word => Value(test.Fact, word)))
        : string.Join(", ", new[] { Bound("at least", test.AtLeast), Bound("below", test.Below) }.OfType<string>());

    private static string? Bound(string word, double? number) => number is { } bound ? string.Create(CultureInfo.InvariantCulture, $"{word} {bound}") : null;

    private static string Stated(VehicleFact fact, Vehicle vehicle) => fact.Kind == FactKind.Number
        ? vehicle.Number(fact.Id) is { } number ? string.Create(CultureInfo.InvariantCulture, $"stated: {Math.Round(number, 1)}") : "not stated"
        : vehicle.Word(fact.Id) is { } word ? $"stated: {Value(fact, word)}" : "not stated";
}
