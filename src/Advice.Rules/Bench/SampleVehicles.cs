using Advice.Documents;
using Advice.Documents.Requests;
using Advice.Intake;

namespace Advice.Rules.Bench;

/// <summary>Vehicles on which an inspection is tried.</summary>
public static class SampleVehicles
{
    /// <summary>Their descriptions, by name.</summary>
    public static IReadOnlyList<(string Name, VehicleDescription Vehicle)> All { get; } =
    [
        ("nothing known", new()),
        ("pick-up of 15 years, four-wheel drive", new() { ModelYear = 2011, Body = "pickup", Driveline = "fourWheelDrive", Fuel = "gasoline", Transmission = "automatic", Odometer = Km(210_000) }),
        ("electric hatchback of 4 years", new() { ModelYear = 2022, Body = "car", Driveline = "frontWheelDrive", Fuel = "electric", Transmission = "singleSpeed", Odometer = Km(40_000) }),
        ("diesel car of 10 years", new() { ModelYear = 2016, Body = "car", Driveline = "frontWheelDrive", Fuel = "diesel", Transmission = "manual", Odometer = Km(160_000) }),
        ("hybrid of 2 years, all-wheel drive", new() { ModelYear = 2024, Body = "suv", Driveline = "allWheelDrive", Fuel = "hybrid", Odometer = Km(15_000) }),
        ("car of 23 years, severe use", new() { ModelYear = 2003, Driveline = "rearWheelDrive", Fuel = "gasoline", Transmission = "manual", Odometer = Km(250_000), Duty = "severe" }),
    ];

    /// <summary>A case of that vehicle and nothing else, in a workshop with a lift.</summary>
    public static Case Case(VehicleDescription vehicle, DateOnly asOf) => new()
    {
        AsOf = asOf,
        Vehicle = VehicleReader.Read(vehicle, asOf),
        Workshop = new Workshop(true, null, Knowledge.Words.Audience.Technician),
    };

    private static Quantity Km(double km) => new() { Value = km, Unit = "km" };
}
