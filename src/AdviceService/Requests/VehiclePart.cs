using Advice.Documents.Requests;

namespace AdviceService.Requests;

/// <summary>Reads the vehicle. Members that are absent, null or "unknown" are unknown, also in its parts.</summary>
/// <param name="words">The words that describe a vehicle.</param>
/// <param name="asOf">The day asked for.</param>
internal sealed class VehiclePart(VehicleWords words, DateOnly asOf)
{
    internal const int EarliestYear = 1950;
    private const int YearsAhead = 2;
    internal const int MostCylinders = 16;

    /// <summary>Reads it.</summary>
    public VehicleDescription Read(ObjectReader vehicle)
    {
        var (description, kinds) = (Described(vehicle), vehicle.Known("severeUse"));
        if (kinds is { } given && description is { Duty: "normal", SevereUse.Count: > 0 })
            given.Errors.BadValue(given.At, ErrorCode.UnfitMember, "Does not go with a normal duty.");
        return description;
    }

    private VehicleDescription Described(ObjectReader vehicle) => new()
    {
        ModelYear = vehicle.Known("modelYear")?.Integer(EarliestYear, asOf.Year + YearsAhead),
        FirstRegistration = vehicle.Known("firstRegistration")?.Date(new DateOnly(EarliestYear, 1, 1), asOf),
        Odometer = vehicle.Known("odometer")?.Object(QuantityPart.Odometer.ReadKnown),
        Body = vehicle.Known("body")?.OneOf(words.Body),
        Driveline = vehicle.Known("driveline")?.OneOf(words.Driveline),
        Transmission = vehicle.Known("transmission")?.OneOf(words.Transmission),
        Fuel = vehicle.Known("fuel")?.OneOf(words.Fuel),
        Engine = vehicle.Known("engine")?.Object(Engine),
        Steering = vehicle.Known("steering")?.Object(Steering),
        Brakes = vehicle.Known("brakes")?.Object(Brakes),
        RearAxle = vehicle.Known("rearAxle")?.OneOf(words.RearAxle),
        Equipment = vehicle.Known("equipment")?.Object(Equipment),
        Duty = vehicle.Known("duty")?.OneOf(words.Duty),
        SevereUse = vehicle.Known("severeUse")?.List(words.SevereUse.Count, one => one.OneOf(words.SevereUse)),
    };

    private EngineDescription Engine(ObjectReader engine) => new()
    {
        TimingDrive = engine.Known("timingDrive")?.OneOf(words.TimingDrive),
        Interference = engine.Known("interference")?.Truth(),
        Cylinders = engine.Known("cylinders")?.Integer(1, MostCylinders),
        Ignition = engine.Known("ignition")?.OneOf(words.Ignition),
        ForcedInduction = engine.Known("forcedInduction")?.Truth(),
        DirectInjection = engine.Known("directInjection")?.Truth(),
    };

    private SteeringDescription Steering(ObjectReader steering) => new()
    {
        WheelDiameter = steering.Known("wheelDiameter")?.Object(QuantityPart.WheelDiameter.ReadKnown),
        Assist = steering.Known("assist")?.OneOf(words.SteeringAssist),
    };

    private BrakesDescription Brakes(ObjectReader brakes) => new()
    {
        Front = brakes.Known("front")?.OneOf(words.FrontBrakes),
        Rear = brakes.Known("rear")?.OneOf(words.RearBrakes),
        Parking = brakes.Known("parking")?.OneOf(words.ParkingBrake),
        Fluid = brakes.Known("fluid")?.OneOf(words.BrakeFluid),
    };

    private static EquipmentDescription Equipment(ObjectReader equipment) => new()
    {
        LimitedSlip = equipment.Known("limitedSlip")?.Truth(),
        AntilockBrakes = equipment.Known("antilockBrakes")?.Truth(),
        AirSuspension = equipment.Known("airSuspension")?.Truth(),
        AirConditioning = equipment.Known("airConditioning")?.Truth(),
        Sunroof = equipment.Known("sunroof")?.Truth(),
        KeylessStart = equipment.Known("keylessStart")?.Truth(),
        StartStop = equipment.Known("startStop")?.Truth(),
        WinterTyres = equipment.Known("winterTyres")?.Truth(),
    };
}
