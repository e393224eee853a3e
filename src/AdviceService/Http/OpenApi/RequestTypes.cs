using Advice.Documents;
using Advice.Documents.Requests;
using AdviceService.Catalogues;

namespace AdviceService.Http.OpenApi;

/// <summary>The types that callers send.</summary>
internal static class RequestTypes
{
    /// <summary>Those in which an optional member is left out, never null.</summary>
    public static Type[] Strict { get; } =
        [
            typeof(AdviceRequest), typeof(WhyNotQuestion), typeof(InspectionRequest), typeof(IntakeRequest), typeof(CatalogueQuery), typeof(SymptomReport),
            typeof(FindingReport), typeof(ServiceReport), typeof(SuppliedInterval), typeof(WorkshopDescription), typeof(Quantity), typeof(SuppliedLimit),
            typeof(ProjectionRequest), typeof(MeasurementReport),
        ];

    /// <summary>Those that describe a vehicle.</summary>
    public static Type[] OfVehicle { get; } =
        [typeof(VehicleDescription), typeof(EngineDescription), typeof(SteeringDescription), typeof(BrakesDescription), typeof(EquipmentDescription)];
}
