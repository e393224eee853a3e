using System.Globalization;
using Advice.Documents;
using Advice.Knowledge;
using Advice.Knowledge.Words;
using Advice.Steps;

namespace Advice.Answers;

/// <summary>Why a step belongs to an inspection although nothing that is known of this vehicle points to it.</summary>
internal sealed class BaseRateWriter(Catalogue catalogue)
{
    /// <summary>How common the worst that it looks for is among such vehicles.</summary>
    public ReasonDocument Write(Step step, Audience audience)
    {
        if (step.Suspects is not [var worst, ..])
            return new ReasonDocument(step.Check.Id, catalogue.Say(audience, Sentences.EveryInspection), null);
        var (fault, name) = (worst.Instance.Fault, worst.Instance.Fault.Name.For(audience));
        var oneIn = Math.Max(2, Math.Round(1 / worst.Probability));
        return new ReasonDocument(
            fault.Id,
            catalogue.Say(audience, Sentences.OneIn, $"{char.ToUpperInvariant(name[0])}{name[1..]}", oneIn.ToString("N0", CultureInfo.InvariantCulture)),
            fault.Source.ToString());
    }
}
