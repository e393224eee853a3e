using Advice.Documents.Judgements;
using Advice.Documents.Requests;
using Advice.Documents.Understood;
using Advice.Symptoms;

namespace Advice.Intake;

/// <summary>A request as it was read.</summary>
/// <param name="Request">The request.</param>
/// <param name="Case">The case.</param>
/// <param name="Judgements">What the findings mean, one for each, in order, then those that the freeze frame makes.</param>
/// <param name="AcrossAxles">What the difference of left and right means, for each check and axle that was measured on both sides.</param>
/// <param name="Stored">All trouble codes with their failure types, ordered.</param>
/// <param name="UnknownCodes">Trouble codes that the rule set does not know, ordered.</param>
/// <param name="FreezeFrameLeft">Values of the freeze frame that count for nothing.</param>
/// <param name="Complaint">What was read from the complaint.</param>
/// <param name="Speaks">Whether anything was said or asked at all.</param>
public sealed record CaseReading(
    AdviceRequest Request, Case Case, IReadOnlyList<JudgementDocument> Judgements, IReadOnlyList<JudgementDocument> AcrossAxles, IReadOnlyList<StoredCode> Stored,
    IReadOnlyList<string> UnknownCodes, IReadOnlyList<FrameMemberLeft> FreezeFrameLeft, ComplaintReading Complaint, bool Speaks)
{
    /// <summary>Whether something was said, and nothing of it tells how the vehicle is.</summary>
    public bool TellsNothing => Speaks && Case.Codes.Count + Case.Done.Count == 0 && !Case.Reports.Any(report => report.Present);
}
