using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Vehicles;

namespace AdviceService.Requests;

/// <summary>The words that describe a vehicle: those of the rule set's facts, and for a fact that it lacks those of the contract.</summary>
internal sealed class VehicleWords(Catalogue catalogue)
{
    /// <summary>The body.</summary>
    public IReadOnlyList<string> Body { get; } = Of(catalogue, "body", "car", "suv", "pickup", "van");

    /// <summary>Which axles are driven.</summary>
    public IReadOnlyList<string> Driveline { get; } =
        Of(catalogue, "driveline", "frontWheelDrive", "rearWheelDrive", "allWheelDrive", "fourWheelDrive");

    /// <summary>The transmission.</summary>
    public IReadOnlyList<string> Transmission { get; } =
        Of(catalogue, "transmission", "automatic", "manual", "cvt", "dualClutch", "singleSpeed");

    /// <summary>The fuel.</summary>
    public IReadOnlyList<string> Fuel { get; } =
        Of(catalogue, "fuel", "gasoline", "diesel", "hybrid", "plugInHybrid", "electric", "lpg", "cng", "flexFuel");

    /// <summary>How it is used.</summary>
    public IReadOnlyList<string> Duty { get; } = Of(catalogue, "duty", "normal", "severe");

    /// <summary>What makes its use severe.</summary>
    public IReadOnlyList<string> SevereUse { get; } =
        catalogue.Facts.GetValueOrDefault(Vehicle.Duty)?.Kinds.GetValueOrDefault(Vehicle.Severe) is { } kinds
            ? [.. kinds.Keys]
            : ["towing", "dust", "shortTrips", "extremeTemperature", "stopAndGo"];

    /// <summary>The rear suspension.</summary>
    public IReadOnlyList<string> RearAxle { get; } = Of(catalogue, "rearAxle", "solid", "independent");

    /// <summary>What drives the camshaft.</summary>
    public IReadOnlyList<string> TimingDrive { get; } = Of(catalogue, "timingDrive", "belt", "chain", "gear");

    /// <summary>The ignition system.</summary>
    public IReadOnlyList<string> Ignition { get; } = Of(catalogue, "ignition", "coilOnPlug", "coilPack", "distributor", "compression");

    /// <summary>The steering assistance.</summary>
    public IReadOnlyList<string> SteeringAssist { get; } = Of(catalogue, "steeringAssist", "manual", "power", "hydraulic", "electric");

    /// <summary>The front brakes.</summary>
    public IReadOnlyList<string> FrontBrakes { get; } = Of(catalogue, "frontBrakes", "disc", "drum");

    /// <summary>The rear brakes.</summary>
    public IReadOnlyList<string> RearBrakes { get; } = Of(catalogue, "rearBrakes", "disc", "drum");

    /// <summary>The parking brake.</summary>
    public IReadOnlyList<string> ParkingBrake { get; } = Of(catalogue, "parkingBrake", "cable", "electric");

    /// <summary>The grade of the brake fluid.</summary>
    public IReadOnlyList<string> BrakeFluid { get; } = Of(catalogue, "brakeFluid", "dot3", "dot4", "dot5", "dot51");

    private static string[] Of(Catalogue catalogue, string fact, params string[] otherwise) =>
        catalogue.Facts.TryGetValue(fact, out var known) && known.Kind == FactKind.Word ? [.. known.Values.Keys] : otherwise;
}
