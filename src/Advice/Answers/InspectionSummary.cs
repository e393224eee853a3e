using System.Globalization;
using Advice.Documents;

namespace Advice.Answers;

/// <summary>An inspection in one sentence.</summary>
internal static class InspectionSummary
{
    /// <summary>How much there is to do here and what stays undone, then what the advice says.</summary>
    public static string Write(AdviceDocument document)
    {
        var here = document.OrderOfWork.Sum(visit => visit.Checks.Count);
        var leftOut = document.LeftOut.Count == 0 ? "" : $"; {document.LeftOut.Count} more that apply are left out";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"An inspection of {here} checks in {document.OrderOfWork.Sum(visit => visit.Minutes)} minutes{leftOut}. {document.Summary}");
    }
}
