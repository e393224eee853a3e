using Advice.Documents.Requests;
using Advice.Knowledge;

namespace AdviceService.Requests;

/// <summary>Reads a request for advice.</summary>
/// <param name="catalogue">The rule set.</param>
/// <param name="words">The words that describe a vehicle.</param>
/// <param name="today">The day that counts where the request names none.</param>
/// <param name="mostSteps">The most steps that may be asked for.</param>
internal sealed class AdvicePart(Catalogue catalogue, VehicleWords words, DateOnly today, int mostSteps)
{
    /// <summary>The earliest day that a request may name.</summary>
    public static readonly DateOnly Earliest = new(1950, 1, 1);

    /// <summary>The latest day that a request may name.</summary>
    public static readonly DateOnly Latest = new(2100, 12, 31);
    internal const int LongestComplaint = 10_000;
    internal const int MostSymptoms = 100;
    internal const int MostCodes = 50;
    internal const int MostFindings = 300;
    internal const int MostServices = 200;

    /// <summary>Reads it.</summary>
    public AdviceRequest Read(ObjectReader request)
    {
        var given = request.Take("asOf");
        var asOf = given?.Date(Earliest, Latest);
        // A bad day is one error; measured against the latest day it makes no others.
        var day = asOf ?? (given is null ? today : Latest);
        return new AdviceRequest
        {
            AsOf = asOf,
            Jurisdiction = request.Take("jurisdiction")?.Entry(catalogue.Jurisdictions, "jurisdiction")?.Id,
            Vehicle = request.Required("vehicle")?.Object(new VehiclePart(words, day).Read) ?? new VehicleDescription(),
            Complaint = request.Take("complaint")?.Text(LongestComplaint),
            Symptoms = request.Take("symptoms")?.ObjectList(MostSymptoms, new SymptomPart(catalogue).Read) ?? [],
            Unsure = UnsurePart.Read(request, catalogue),
            TroubleCodes = request.Take("troubleCodes")?.List(MostCodes, TroubleCodePart.Read) ?? [],
            Findings = request.Take("findings")?.ObjectList(MostFindings, new FindingPart(catalogue, day).Read) ?? [],
            FreezeFrame = request.Take("freezeFrame")?.Object(FreezeFramePart.Read),
            Services = request.Take("services")?.ObjectList(MostServices, new ServicePart(catalogue, day).Read) ?? [],
            Workshop = request.Take("workshop")?.Object(WorkshopPart.Read),
            Limit = request.Take("limit")?.Integer(1, mostSteps),
        };
    }
}
