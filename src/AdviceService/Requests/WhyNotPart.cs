using Advice.Documents.Requests;
using Advice.Knowledge;

namespace AdviceService.Requests;

/// <summary>Reads a why-not question.</summary>
internal sealed class WhyNotPart(Catalogue catalogue, AdvicePart @case)
{
    /// <summary>Reads it.</summary>
    public WhyNotRequest Read(ObjectReader question)
    {
        var (fault, check) = (question.Take("fault"), question.Take("check"));
        if (fault is null == check is null)
            question.Errors.BadShape(question.At, fault is null ? ErrorCode.MissingMember : ErrorCode.UnfitMember, "Must have a fault or a check, not both.");
        return new WhyNotRequest(
            @case.Read(question), fault?.Entry(catalogue.Faults, "fault")?.Id, check?.Entry(catalogue.Checks, "check")?.Id);
    }
}
