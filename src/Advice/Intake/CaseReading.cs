using Advice.Documents;

namespace Advice.Intake;

/// <summary>A request as it was read.</summary>
/// <param name="Case">The case.</param>
/// <param name="Judgements">What the findings mean, one for each, in order.</param>
/// <param name="AcrossAxles">What the difference of left and right means, for each check and axle that was measured on both sides.</param>
/// <param name="UnknownCodes">Trouble codes that the rule set does not know, ordered.</param>
/// <param name="NotUnderstood">Parts of the complaint in which nothing was recognised.</param>
public sealed record CaseReading(
    Case Case, IReadOnlyList<JudgementDocument> Judgements, IReadOnlyList<JudgementDocument> AcrossAxles, IReadOnlyList<string> UnknownCodes,
    IReadOnlyList<string> NotUnderstood);
