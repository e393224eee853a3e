using Advice.Arithmetic;
using Advice.Documents;
using Advice.Findings;
using Advice.Knowledge;

namespace Advice.Judging;

/// <summary>Puts a finding through the workshop arithmetic that its check names.</summary>
public sealed class FindingArithmetic(Catalogue catalogue)
{
    /// <summary>The judgement with what the arithmetic gives; as it was where the check names none or nothing was given for it, and with the reason
    /// where the inputs do not suffice or do not go together.</summary>
    /// <param name="judgement">The judgement on the finding.</param>
    /// <param name="finding">The finding.</param>
    /// <param name="case">The vehicle, and the day that counts where the finding has none.</param>
    public JudgementDocument Beside(JudgementDocument judgement, FindingReport finding, Case @case)
    {
        if (catalogue.Checks[finding.Check].Arithmetic is not { } named || (named.Input is null && finding.With is null))
            return judgement;
        var computation = Computations.Find(named.Computation)!;
        var given = Of(finding, named, computation, @case);
        if (computation.Inputs.OfType<NumberInput>().FirstOrDefault(input => input.Name == named.Input && !given.ContainsKey(input)) is { } measured)
            return judgement.Noting(FormattableString.Invariant($"The arithmetic holds from {measured.Least} to {measured.Most} {measured.Unit}."));
        var missing = computation.Inputs.Where(input => input.IsRequired && !given.ContainsKey(input)).Select(input => $"'{input.Name}'").ToList();
        if (missing.Count > 0)
            return missing.Count > 1 && finding.With is null ? judgement : judgement.Noting($"With {string.Join(", ", missing)} given too, the arithmetic says more.");
        var outcome = computation.Compute(new Given(given));
        return outcome.Why is { } why
            ? judgement.Noting($"No arithmetic, for '{outcome.Refused!.Name}': {why}")
            : judgement with { Arithmetic = ComputationDocument.Of(computation, outcome, catalogue.MeaningsByComputation[computation.Name]) };
    }

    private Dictionary<Input, object> Of(FindingReport finding, CheckArithmetic named, Computation computation, Case @case)
    {
        var given = new Dictionary<Input, object>(finding.With?.All ?? new Dictionary<Input, object>());
        foreach (var input in computation.Inputs)
        {
            if (named.With.TryGetValue(input.Name, out var word))
                given[input] = word;
            else if (input is DayInput { Past: false })
                given[input] = finding.On ?? @case.AsOf;
            else if (input.Name == named.Input && Measured(finding, (NumberInput)input) is { } value)
                given[input] = value;
            else if (named.Facts.TryGetValue(input.Name, out var fact) && !given.ContainsKey(input) && @case.Vehicle.Word(fact) is { } known)
                given[input] = catalogue.Facts[fact].Values[known];
        }

        return given;
    }

    /// <summary>The measured value in the unit of the input; null where it lies outside what the formula holds for.</summary>
    private static double? Measured(FindingReport finding, NumberInput input) =>
        UnitConversion.ConvertAsRead(finding.Value!.Value, finding.Unit!, input.Unit ?? finding.Unit!) is { } converted
        && converted >= input.Least && converted <= input.Most
            ? converted
            : null;
}
