using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Words;
using Advice.Vehicles;

namespace Advice.Tests.Knowledge;

public class VehicleFitTests
{
    private static readonly VehicleFact Fuel = new(
        "fuel", "the fuel", FactKind.Word, new Dictionary<string, string> { ["petrol"] = "petrol", ["hybrid"] = "a hybrid", ["electric"] = "electric" },
        new Dictionary<string, double> { ["petrol"] = 0.9, ["hybrid"] = 0.06, ["electric"] = 0.04 });

    private static readonly VehicleFact Age = new(
        "ageYears", "the age", FactKind.Number, new Dictionary<string, string>(), new Dictionary<string, double>());

    private static readonly FactTest HighVoltage = new(Fuel, ["hybrid", "electric"], null, null);
    private static readonly FactTest Electric = new(Fuel, ["electric"], null, null);
    private static readonly FactTest Old = new(Age, [], 10, null);
    private static readonly FactTest VeryOld = new(Age, [], 20, null);

    public static TheoryData<string, double> Shares => new()
    {
        { "nothing", 0.1 },
        { "electric", 1 },
        { "high voltage", 1 },
        { "old", 0.1 },
    };

    [Theory]
    [MemberData(nameof(Shares))]
    public void Share_HighVoltageCheckOnUnknownVehicle_IsCertainOnlyGivenAFaultThatNeedsIt(string given, double share) =>
        Assert.Equal(share, VehicleFit.Share([Rule(HighVoltage)], Given(given), Vehicle.Unknown), 12);

    [Fact]
    public void Share_GivenAWiderCondition_StaysOpen() =>
        Assert.Equal(0.04, VehicleFit.Share([Rule(Electric)], [Rule(HighVoltage)], Vehicle.Unknown), 12);

    [Fact]
    public void Share_VehicleIsKnownNotToFit_IsNoneWhateverIsGiven() => Assert.Equal(
        0, VehicleFit.Share([Rule(HighVoltage)], [Rule(Electric)], new Vehicle(new Dictionary<string, string> { ["fuel"] = "petrol" }, new Dictionary<string, double>())));

    [Fact]
    public void FollowsFrom_Numbers_WhereTheRangeIsWithin()
    {
        Assert.True(Old.FollowsFrom(VeryOld));
        Assert.True(Old.FollowsFrom(Old));
        Assert.False(VeryOld.FollowsFrom(Old));
        Assert.False(Old.FollowsFrom(Electric));
    }

    private static FitsRule[] Given(string name) => name switch
    {
        "electric" => [Rule(Electric)],
        "high voltage" => [Rule(HighVoltage)],
        "old" => [Rule(Old)],
        _ => [],
    };

    private static FitsRule Rule(FactTest test) => new("rule", [], [], [], "it has", new VehicleCondition([test]), new Text("", ""), null);
}
