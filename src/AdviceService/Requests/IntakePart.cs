using Advice.Documents.Requests;
using Advice.Knowledge;

namespace AdviceService.Requests;

/// <summary>Reads a request for intake into the members of a request for advice that it shares.</summary>
internal sealed class IntakePart(Catalogue catalogue, VehicleWords words, DateOnly today)
{
    /// <summary>Reads it.</summary>
    public AdviceRequest Read(ObjectReader request)
    {
        var given = request.Take("asOf");
        var asOf = given?.Date(AdvicePart.Earliest, AdvicePart.Latest);
        var day = asOf ?? (given is null ? today : AdvicePart.Latest);
        var (text, complaint) = (request.Take("text"), request.Take("complaint"));
        if (text is not null && complaint is { } second)
            request.Errors.BadShape(second.At, ErrorCode.UnfitMember, "Must be left out where there is a text.");
        return new AdviceRequest
        {
            AsOf = asOf,
            Jurisdiction = request.Take("jurisdiction")?.Entry(catalogue.Jurisdictions, "jurisdiction")?.Id,
            Vehicle = request.Take("vehicle")?.Object(new VehiclePart(words, day).Read) ?? new VehicleDescription(),
            Complaint = (text ?? complaint)?.Text(AdvicePart.LongestComplaint),
            Unsure = UnsurePart.Read(request, catalogue),
            TroubleCodes = request.Take("troubleCodes")?.List(AdvicePart.MostCodes, TroubleCodePart.Read) ?? [],
            Findings = request.Take("findings")?.ObjectList(AdvicePart.MostFindings, new FindingPart(catalogue, day).Read) ?? [],
            FreezeFrame = request.Take("freezeFrame")?.Object(FreezeFramePart.Read),
            Workshop = request.Take("workshop")?.Object(WorkshopPart.Read),
        };
    }
}
