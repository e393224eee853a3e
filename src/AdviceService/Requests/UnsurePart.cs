using Advice.Knowledge;

namespace AdviceService.Requests;

/// <summary>Reads of which symptoms the driver cannot say whether they are there.</summary>
internal static class UnsurePart
{
    /// <summary>Reads their ids from a request.</summary>
    public static IReadOnlyList<string> Read(ObjectReader request, Catalogue catalogue) =>
        request.Take("unsure")?.List(AdvicePart.MostSymptoms, one => one.Entry(catalogue.Symptoms, "symptom")?.Id) ?? [];
}
