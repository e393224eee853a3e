namespace Advice.Documents.Requests;

/// <summary>The vehicle as far as the caller knows it.</summary>
public sealed record VehicleDescription
{
    /// <summary>Model year, 1950 … two years ahead of the day asked for.</summary>
    public int? ModelYear { get; init; }

    /// <summary>Day of the first registration, from which tests that the law asks for count.</summary>
    public DateOnly? FirstRegistration { get; init; }

    /// <summary>Distance driven, km or mi, at most 3,000,000 km.</summary>
    public Quantity? Odometer { get; init; }

    /// <summary>The body: car, suv, pickup or van.</summary>
    public string? Body { get; init; }

    /// <summary>frontWheelDrive, rearWheelDrive, allWheelDrive or fourWheelDrive.</summary>
    public string? Driveline { get; init; }

    /// <summary>automatic, manual, cvt, dualClutch or singleSpeed.</summary>
    public string? Transmission { get; init; }

    /// <summary>gasoline, diesel, hybrid, plugInHybrid, electric, lpg, cng or flexFuel.</summary>
    public string? Fuel { get; init; }

    /// <summary>The engine.</summary>
    public EngineDescription? Engine { get; init; }

    /// <summary>The steering.</summary>
    public SteeringDescription? Steering { get; init; }

    /// <summary>The brakes.</summary>
    public BrakesDescription? Brakes { get; init; }

    /// <summary>Rear suspension: solid or independent.</summary>
    public string? RearAxle { get; init; }

    /// <summary>What it is fitted with.</summary>
    public EquipmentDescription? Equipment { get; init; }

    /// <summary>normal or severe (towing, dust, short trips, great heat or cold, stop and go).</summary>
    public string? Duty { get; init; }

    /// <summary>What makes its use severe: towing, dust, shortTrips, extremeTemperature, stopAndGo; any of them says that the duty is severe.</summary>
    public IReadOnlyList<string>? SevereUse { get; init; }
}
