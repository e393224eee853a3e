using System.Text.Json.Nodes;
using Advice.Documents;
using Advice.Documents.Requests;
using Advice.Vehicles;

namespace Advice.Counterfactuals;

/// <summary>Where a request states a fact of the vehicle: the reverse of <see cref="Intake.VehicleReader"/>.</summary>
/// <param name="At">The member, as a JSON pointer.</param>
/// <param name="Json">The value there.</param>
/// <param name="Set">States it.</param>
public sealed record FactMember(string At, JsonNode Json, Func<VehicleDescription, VehicleDescription> Set)
{
    /// <summary>The member that states a word or truth; null where no request can.</summary>
    public static FactMember? Of(string fact, string word) => fact switch
    {
        "body" => Word("body", word, vehicle => vehicle with { Body = word }),
        "driveline" => Word("driveline", word, vehicle => vehicle with { Driveline = word }),
        "transmission" => Word("transmission", word, vehicle => vehicle with { Transmission = word }),
        "fuel" => Word("fuel", word, vehicle => vehicle with { Fuel = word }),
        "duty" => Word("duty", word, vehicle => vehicle with { Duty = word }),
        "rearAxle" => Word("rearAxle", word, vehicle => vehicle with { RearAxle = word }),
        "timingDrive" => Word("engine/timingDrive", word, vehicle => vehicle with { Engine = Engine(vehicle) with { TimingDrive = word } }),
        "ignition" => Word("engine/ignition", word, vehicle => vehicle with { Engine = Engine(vehicle) with { Ignition = word } }),
        "interference" => Truth("engine/interference", word, (vehicle, truth) => vehicle with { Engine = Engine(vehicle) with { Interference = truth } }),
        "forcedInduction" => Truth("engine/forcedInduction", word, (vehicle, truth) => vehicle with { Engine = Engine(vehicle) with { ForcedInduction = truth } }),
        "directInjection" => Truth("engine/directInjection", word, (vehicle, truth) => vehicle with { Engine = Engine(vehicle) with { DirectInjection = truth } }),
        "steeringAssist" => Word("steering/assist", word, vehicle => vehicle with { Steering = (vehicle.Steering ?? new()) with { Assist = word } }),
        "frontBrakes" => Word("brakes/front", word, vehicle => vehicle with { Brakes = Brakes(vehicle) with { Front = word } }),
        "rearBrakes" => Word("brakes/rear", word, vehicle => vehicle with { Brakes = Brakes(vehicle) with { Rear = word } }),
        "parkingBrake" => Word("brakes/parking", word, vehicle => vehicle with { Brakes = Brakes(vehicle) with { Parking = word } }),
        "brakeFluid" => Word("brakes/fluid", word, vehicle => vehicle with { Brakes = Brakes(vehicle) with { Fluid = word } }),
        "limitedSlip" => Truth("equipment/limitedSlip", word, (vehicle, truth) => vehicle with { Equipment = Equipment(vehicle) with { LimitedSlip = truth } }),
        "antilockBrakes" => Truth("equipment/antilockBrakes", word, (vehicle, truth) => vehicle with { Equipment = Equipment(vehicle) with { AntilockBrakes = truth } }),
        "airSuspension" => Truth("equipment/airSuspension", word, (vehicle, truth) => vehicle with { Equipment = Equipment(vehicle) with { AirSuspension = truth } }),
        "airConditioning" => Truth("equipment/airConditioning", word, (vehicle, truth) => vehicle with { Equipment = Equipment(vehicle) with { AirConditioning = truth } }),
        "sunroof" => Truth("equipment/sunroof", word, (vehicle, truth) => vehicle with { Equipment = Equipment(vehicle) with { Sunroof = truth } }),
        "keylessStart" => Truth("equipment/keylessStart", word, (vehicle, truth) => vehicle with { Equipment = Equipment(vehicle) with { KeylessStart = truth } }),
        "startStop" => Truth("equipment/startStop", word, (vehicle, truth) => vehicle with { Equipment = Equipment(vehicle) with { StartStop = truth } }),
        "winterTyres" => Truth("equipment/winterTyres", word, (vehicle, truth) => vehicle with { Equipment = Equipment(vehicle) with { WinterTyres = truth } }),
        _ => null,
    };

    /// <summary>The member that states a number; null where no request can. An age is stated by its model year.</summary>
    public static FactMember? Of(string fact, double number) => fact switch
    {
        "modelYear" => new("/vehicle/modelYear", JsonValue.Create((int)number), vehicle => vehicle with { ModelYear = (int)number }),
        "cylinders" => new("/vehicle/engine/cylinders", JsonValue.Create((int)number), vehicle => vehicle with { Engine = Engine(vehicle) with { Cylinders = (int)number } }),
        Vehicle.OdometerKm => Amount("odometer", number, "km", (vehicle, amount) => vehicle with { Odometer = amount }),
        "wheelDiameterIn" => Amount("steering/wheelDiameter", number, "in", (vehicle, amount) => vehicle with { Steering = (vehicle.Steering ?? new()) with { WheelDiameter = amount } }),
        _ => null,
    };

    private static EngineDescription Engine(VehicleDescription vehicle) => vehicle.Engine ?? new();

    private static BrakesDescription Brakes(VehicleDescription vehicle) => vehicle.Brakes ?? new();

    private static EquipmentDescription Equipment(VehicleDescription vehicle) => vehicle.Equipment ?? new();

    private static FactMember Word(string member, string word, Func<VehicleDescription, VehicleDescription> set) => new($"/vehicle/{member}", JsonValue.Create(word), set);

    private static FactMember Truth(string member, string word, Func<VehicleDescription, bool, VehicleDescription> set) =>
        new($"/vehicle/{member}", JsonValue.Create(word == "true"), vehicle => set(vehicle, word == "true"));

    private static FactMember Amount(string member, double value, string unit, Func<VehicleDescription, Quantity, VehicleDescription> set) => new(
        $"/vehicle/{member}", new JsonObject { ["value"] = value, ["unit"] = unit }, vehicle => set(vehicle, new Quantity { Value = value, Unit = unit }));
}
