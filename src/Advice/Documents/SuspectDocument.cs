using Advice.Knowledge.Limits;

namespace Advice.Documents;

/// <summary>A fault that the case raised.</summary>
/// <param name="Fault">Id of the fault.</param>
/// <param name="Name">Its name.</param>
/// <param name="System">Id of its system.</param>
/// <param name="Place">Where, if the case tells.</param>
/// <param name="Probability">Probability given all that is known, to 4 decimals.</param>
/// <param name="Deficiency">Its usual class when found.</param>
/// <param name="OnlyIf">What must be true of the vehicle for it to exist, where that is not known.</param>
/// <param name="Reasons">Why.</param>
public sealed record SuspectDocument(
    string Fault, string Name, string System, string? Place, double Probability, Deficiency Deficiency, string? OnlyIf,
    IReadOnlyList<ReasonDocument> Reasons);
