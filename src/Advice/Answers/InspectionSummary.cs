using Advice.Documents;
using Advice.Knowledge;
using Advice.Knowledge.Words;

namespace Advice.Answers;

/// <summary>An inspection in one sentence.</summary>
internal static class InspectionSummary
{
    /// <summary>How much there is to do here and what stays undone, then what the advice says.</summary>
    public static string Write(AdviceDocument document, Catalogue catalogue, Audience audience)
    {
        var (here, minutes) = (document.OrderOfWork.Sum(visit => visit.Checks.Count), document.OrderOfWork.Sum(visit => visit.Minutes));
        var whole = document.LeftOut.Count == 0
            ? catalogue.Say(audience, Sentences.Inspection, here, minutes)
            : catalogue.Say(audience, Sentences.InspectionCut, here, minutes, document.LeftOut.Count);
        return $"{whole} {document.Summary}";
    }
}
