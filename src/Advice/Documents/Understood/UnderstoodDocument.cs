namespace Advice.Documents.Understood;

/// <summary>How the request was understood.</summary>
/// <param name="Symptoms">Symptoms reported or denied.</param>
/// <param name="TroubleCodes">What the trouble codes mean.</param>
/// <param name="NotUnderstood">Parts of the complaint in which nothing was recognised.</param>
/// <param name="Assumptions">What was assumed for want of a fact.</param>
/// <param name="FreezeFrameLeft">Values of the freeze frame that count for nothing, and why; what was taken stands among the judgements.</param>
public sealed record UnderstoodDocument(
    IReadOnlyList<UnderstoodSymptom> Symptoms, IReadOnlyList<UnderstoodCode> TroubleCodes,
    IReadOnlyList<string> NotUnderstood, IReadOnlyList<string> Assumptions, IReadOnlyList<FrameMemberLeft> FreezeFrameLeft);
