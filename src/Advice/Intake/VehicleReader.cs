using System.Globalization;
using Advice.Documents.Requests;
using Advice.Findings;
using Advice.Vehicles;

namespace Advice.Intake;

/// <summary>Turns a described vehicle into the facts that rules ask for.</summary>
public static class VehicleReader
{
    /// <summary>The facts; what the description leaves out is unknown. Age counts from the start of the model year, else from the first registration.</summary>
    public static Vehicle Read(VehicleDescription vehicle, DateOnly asOf)
    {
        var words = new Dictionary<string, string>();
        var numbers = new Dictionary<string, double>();

        Word("body", vehicle.Body);
        Word("driveline", vehicle.Driveline);
        Word("transmission", vehicle.Transmission);
        Word("fuel", vehicle.Fuel);
        Word(Vehicle.Duty, vehicle.Duty ?? (vehicle.SevereUse?.Count > 0 ? Vehicle.Severe : null));
        Word("rearAxle", vehicle.RearAxle);
        Word("timingDrive", vehicle.Engine?.TimingDrive);
        Truth("interference", vehicle.Engine?.Interference);
        Word("ignition", vehicle.Engine?.Ignition);
        Truth("forcedInduction", vehicle.Engine?.ForcedInduction);
        Truth("directInjection", vehicle.Engine?.DirectInjection);
        Number("cylinders", vehicle.Engine?.Cylinders);
        Word("steeringAssist", vehicle.Steering?.Assist);
        Number("wheelDiameterIn", UnitConversion.Convert(vehicle.Steering?.WheelDiameter, "in"));
        Word("frontBrakes", vehicle.Brakes?.Front);
        Word("rearBrakes", vehicle.Brakes?.Rear);
        Word("parkingBrake", vehicle.Brakes?.Parking);
        Word("brakeFluid", vehicle.Brakes?.Fluid);
        Truth("limitedSlip", vehicle.Equipment?.LimitedSlip);
        Truth("antilockBrakes", vehicle.Equipment?.AntilockBrakes);
        Truth("airSuspension", vehicle.Equipment?.AirSuspension);
        Truth("airConditioning", vehicle.Equipment?.AirConditioning);
        Truth("sunroof", vehicle.Equipment?.Sunroof);
        Truth("keylessStart", vehicle.Equipment?.KeylessStart);
        Truth("startStop", vehicle.Equipment?.StartStop);
        Truth("winterTyres", vehicle.Equipment?.WinterTyres);
        Number(Vehicle.OdometerKm, UnitConversion.Convert(vehicle.Odometer, "km"));
        if (vehicle.ModelYear is { } year)
        {
            Number("modelYear", year);
            Number(Vehicle.AgeYears, Math.Max(0, MeanYear.Between(new DateOnly(year, 1, 1), asOf)));
        }
        else if (vehicle.FirstRegistration is { } registered)
        {
            Number(Vehicle.AgeYears, MeanYear.Between(registered, asOf));
        }

        return new Vehicle(words, numbers)
        {
            FirstRegistration = vehicle.FirstRegistration,
            SevereUse = words.GetValueOrDefault(Vehicle.Duty) == Vehicle.Severe ? [.. vehicle.SevereUse?.Distinct() ?? []] : [],
        };

        void Word(string fact, string? word)
        {
            if (word is not null and not "unknown")
                words[fact] = word;
        }

        void Truth(string fact, bool? truth) => Word(fact, truth?.ToString(CultureInfo.InvariantCulture).ToLowerInvariant());

        void Number(string fact, double? number)
        {
            if (number is { } value)
                numbers[fact] = value;
        }
    }
}
