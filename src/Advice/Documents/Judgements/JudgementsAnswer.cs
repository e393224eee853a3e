using Advice.Documents.Understood;
using Advice.Knowledge;

namespace Advice.Documents.Judgements;

/// <summary>What the findings mean.</summary>
/// <param name="AsOf">The day for which ages were reckoned.</param>
/// <param name="Program">Version of the program.</param>
/// <param name="RuleSet">The rule set that was used.</param>
/// <param name="Driving">Whether it may be driven.</param>
/// <param name="Judgements">One entry per finding, in order, then those that the freeze frame makes.</param>
/// <param name="AcrossAxles">What the difference of left and right means, for each check and axle that was measured on both sides.</param>
/// <param name="Cautions">Every caution that a judgement names, and those of the case itself.</param>
/// <param name="Assumptions">What was assumed for want of a fact.</param>
/// <param name="FreezeFrameLeft">Values of the freeze frame that count for nothing, and why.</param>
/// <param name="FromOverlays">Entries of overlays that had a part in this answer, and those switched off that would have had one.</param>
/// <param name="Notice">What the answer defers to.</param>
public sealed record JudgementsAnswer(
    DateOnly AsOf, string Program, RuleSetStamp RuleSet, DrivingDocument Driving, IReadOnlyList<JudgementDocument> Judgements,
    IReadOnlyList<JudgementDocument> AcrossAxles, IReadOnlyList<CautionDocument> Cautions, IReadOnlyList<string> Assumptions,
    IReadOnlyList<FrameMemberLeft> FreezeFrameLeft, IReadOnlyList<OverlayEntry> FromOverlays, string Notice);
