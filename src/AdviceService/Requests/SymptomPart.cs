using Advice.Documents.Requests;
using Advice.Knowledge;

namespace AdviceService.Requests;

/// <summary>Reads what the driver notices.</summary>
internal sealed class SymptomPart(Catalogue catalogue)
{
    internal const int MostOccasions = 20;

    /// <summary>Reads one symptom.</summary>
    public SymptomReport Read(ObjectReader symptom) => new()
    {
        Symptom = symptom.Required("symptom")?.Entry(catalogue.Symptoms, "symptom")?.Id ?? "",
        Occasions = symptom.Take("occasions")?.List(MostOccasions, Occasion) ?? [],
        Position = symptom.Take("position")?.Entry(catalogue.Positions, "position")?.Id,
        Present = symptom.Take("present")?.Truth() ?? true,
    };

    private string? Occasion(JsonValue occasion) => occasion.Entry(catalogue.Occasions, "occasion")?.Id;
}
