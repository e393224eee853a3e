using System.Globalization;
using Advice.Documents;
using Advice.Knowledge;
using Advice.Steps;

namespace Advice.Answers;

/// <summary>Why a step belongs to an inspection although nothing that is known of this vehicle points to it.</summary>
internal static class BaseRateWriter
{
    /// <summary>How common the worst that it looks for is among such vehicles.</summary>
    public static ReasonDocument Write(Step step, Audience audience)
    {
        if (step.Suspects is not [var worst, ..])
            return new ReasonDocument(step.Check.Id, "It belongs to every inspection.", null);
        var (fault, name) = (worst.Instance.Fault, worst.Instance.Fault.Name.For(audience));
        var oneIn = Math.Max(2, Math.Round(1 / worst.Probability));
        return new ReasonDocument(
            fault.Id,
            string.Create(CultureInfo.InvariantCulture, $"{char.ToUpperInvariant(name[0])}{name[1..]}: about one in {oneIn:N0} vehicles like this one."),
            fault.Source.ToString());
    }
}
