using System.Text.Json;
using Advice.Documents.Requests;
using Advice.Documents.Understood;
using Advice.FreezeFrames;
using Advice.Rules.Tests.Cases;
using Advice.Vehicles;

namespace Advice.Rules.Tests.FreezeFrames;

/// <summary>What the checks of the repository take from a freeze frame. Values in the units of the members; the sums by hand.</summary>
public class FrameReaderTests
{
    private const string Warm = "\"engineSpeed\":{\"value\":700,\"unit\":\"rpm\"},\"coolantTemperature\":{\"value\":88,\"unit\":\"degC\"}";
    private static readonly FrameReader Frames = new(RepositoryRules.Book.Catalogue);

    [Theory]
    [InlineData($"{Warm},{Bank1}", "fuel-trim-total=23.5 percent from shortTermBank1+longTermBank1")]
    [InlineData($"{Warm},{Bank1},{Bank2}", "fuel-trim-total=-27.5 percent from shortTermBank2+longTermBank2")]
    [InlineData($"{Warm},{Bank1},\"fuelSystemStatus\":\"closedLoop\"", "fuel-trim-total=23.5 percent from shortTermBank1+longTermBank1")]
    [InlineData($"{Warm},\"runTime\":{{\"value\":900,\"unit\":\"s\"}}", "coolant-temperature-live=88 degC from coolantTemperature")]
    [InlineData("\"engineSpeed\":{\"value\":500,\"unit\":\"rpm\"},\"controlModuleVoltage\":{\"value\":11900,\"unit\":\"mV\"}", "charging-voltage=11.9 V from controlModuleVoltage")]
    [InlineData($"{Warm},{Bank1},\"fuelSystemStatus\":\"openLoopLoad\"", "")]
    [InlineData($"{Warm},\"runTime\":{{\"value\":899,\"unit\":\"s\"}}", "")]
    [InlineData(Warm, "")]
    [InlineData("\"engineSpeed\":{\"value\":499,\"unit\":\"rpm\"},\"controlModuleVoltage\":{\"value\":11,\"unit\":\"V\"}", "")]
    [InlineData("\"engineSpeed\":{\"value\":900,\"unit\":\"rpm\"},\"controlModuleVoltage\":{\"value\":12,\"unit\":\"V\"}", "")]
    public void Read_Frame_TakesWhatTheChecksTake(string frame, string expected) => Assert.Equal(expected, string.Join(" ", Read(frame).Taken.Select(one =>
        FormattableString.Invariant($"{one.Finding.Check}={one.Finding.Value} {one.Finding.Unit} from {string.Join("+", one.Members)}"))));

    [Theory]
    [InlineData($"{Warm},{Bank1},\"fuelSystemStatus\":\"openLoopLoad\"", "shortTermBank1", "'fuel-trim-total' does not take it where fuelSystemStatus is openLoopCold or openLoopLoad or openLoopFault or closedLoopFault.")]
    [InlineData(Bank1, "longTermBank1", "'fuel-trim-total' takes it only where coolantTemperature is at least 70 degC, which is not given.")]
    [InlineData($"\"coolantTemperature\":{{\"value\":69,\"unit\":\"degC\"}},{Bank1}", "shortTermBank1", "'fuel-trim-total' takes it only where coolantTemperature is at least 70 degC.")]
    [InlineData($"{Warm},\"shortTermBank1\":{{\"value\":9,\"unit\":\"percent\"}}", "shortTermBank1", "'fuel-trim-total' adds it to longTermBank1, which is not given.")]
    [InlineData($"{Warm},\"shortTermBank1\":{{\"value\":40,\"unit\":\"percent\"}},\"longTermBank1\":{{\"value\":21,\"unit\":\"percent\"}}", "longTermBank1", "'fuel-trim-total' holds from -60 to 60 percent only.")]
    [InlineData($"{Warm}", "coolantTemperature", "'coolant-temperature-live' takes it only where runTime is at least 900 s, which is not given.")]
    [InlineData("\"throttle\":{\"value\":15,\"unit\":\"percent\"}", "throttle", "No check rests on it alone. It tells how the car ran when the code was stored.")]
    public void Read_WhatIsNotTaken_SaysWhy(string frame, string member, string because) =>
        Assert.Equal(because, Read(frame).NotTaken.Single(one => one.Member == member).Because);

    [Fact]
    public void Read_FindingOfTheSameCheck_Wins()
    {
        var reading = Read($"{Warm},{Bank1}", new FindingReport { Check = "fuel-trim-total", Value = 1, Unit = "percent" });

        Assert.Empty(reading.Taken);
        Assert.Contains(new FrameMemberLeft("shortTermBank1", "Your own finding of 'fuel-trim-total' counts."), reading.NotTaken);
    }

    [Fact]
    public void Read_CheckThatDoesNotExistOnTheVehicle_IsNotDone()
    {
        var diesel = new Vehicle(new Dictionary<string, string> { ["fuel"] = "diesel" }, new Dictionary<string, double>());

        var reading = Frames.Read(Request($"{Warm},{Bank1}"), Of(diesel));

        Assert.Empty(reading.Taken);
        Assert.Contains(new FrameMemberLeft("shortTermBank1", "'fuel-trim-total' does not apply to this vehicle."), reading.NotTaken);
    }

    /// <summary>Each value that was given was taken, served as a condition of what was taken, or is named with the reason.</summary>
    [Fact]
    public void Read_EveryMember_NothingIsDropped()
    {
        var members = FrameInputs.All.OfType<Advice.Arithmetic.NumberInput>().ToList();

        var reading = Read(string.Join(',', members.Select(member => FormattableString.Invariant($"\"{member.Name}\":{{\"value\":{member.Most},\"unit\":\"{member.Unit}\"}}"))));

        Assert.Empty(reading.Taken);
        Assert.Equal(members.Select(member => member.Name), reading.NotTaken.Select(left => left.Member));
    }

    private const string Bank1 = "\"shortTermBank1\":{\"value\":9.4,\"unit\":\"percent\"},\"longTermBank1\":{\"value\":14.1,\"unit\":\"percent\"}";
    private const string Bank2 = "\"shortTermBank2\":{\"value\":-12.5,\"unit\":\"percent\"},\"longTermBank2\":{\"value\":-15,\"unit\":\"percent\"}";

    private static FrameReading Read(string frame, params IReadOnlyList<FindingReport> findings) => Frames.Read(
        Request(frame) with { Findings = findings }, Of(new Vehicle(new Dictionary<string, string>(), new Dictionary<string, double>())));

    private static Case Of(Vehicle vehicle) => new() { AsOf = new DateOnly(2026, 3, 1), Vehicle = vehicle };

    private static AdviceRequest Request(string frame) =>
        new() { Vehicle = new VehicleDescription(), FreezeFrame = FrameConverter.Of(JsonDocument.Parse($"{{{frame}}}").RootElement) };
}
