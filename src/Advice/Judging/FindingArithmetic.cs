using Advice.Arithmetic;
using Advice.Documents;
using Advice.Findings;
using Advice.Knowledge;

namespace Advice.Judging;

/// <summary>Puts a measured value through the workshop arithmetic that its check names.</summary>
public sealed class FindingArithmetic(Catalogue catalogue)
{
    /// <summary>What it gives; null where the check names none or the value lies outside what the formula holds for.</summary>
    public ComputationDocument? Of(FindingReport finding)
    {
        if (finding.Value is not { } value || catalogue.Checks[finding.Check].Arithmetic is not { } named)
            return null;
        var computation = Computations.All.First(one => one.Name == named.Computation);
        var inputs = computation.Inputs.ToDictionary(input => input.Name);
        var input = (NumberInput)inputs[named.Input];
        if (UnitConversion.ConvertAsRead(value, finding.Unit!, input.Unit ?? finding.Unit!) is not { } converted || converted < input.Least || converted > input.Most)
            return null;
        var given = named.With.ToDictionary(word => inputs[word.Key], object (word) => word.Value);
        given[input] = converted;
        var outcome = computation.Compute(new Given(given));
        return outcome.Refused is null ? ComputationDocument.Of(computation, outcome, catalogue.MeaningsByComputation[computation.Name]) : null;
    }
}
