using Advice.Arithmetic;
using Advice.Documents;
using Advice.Findings;
using Advice.Knowledge;

namespace Advice.Judging;

/// <summary>Puts a finding through the workshop arithmetic that its check names.</summary>
public sealed class FindingArithmetic(Catalogue catalogue)
{
    private static readonly Dictionary<string, Computation> ByName = Computations.All.ToDictionary(one => one.Name);

    /// <summary>The judgement with what the arithmetic gives; as it was where the check names none or nothing was given for it, and with the reason
    /// where the inputs do not suffice or do not go together.</summary>
    /// <param name="judgement">The judgement on the finding.</param>
    /// <param name="finding">The finding.</param>
    /// <param name="asOf">The day that counts where the finding has none.</param>
    public JudgementDocument Beside(JudgementDocument judgement, FindingReport finding, DateOnly asOf)
    {
        if (catalogue.Checks[finding.Check].Arithmetic is not { } named || (named.Input is null && finding.With is null))
            return judgement;
        var computation = ByName[named.Computation];
        var given = Of(finding, named, computation, asOf);
        if (computation.Inputs.Where(input => !input.Optional && !given.ContainsKey(input)).ToList() is { Count: > 0 } missing)
            return judgement.Noting(Missing(missing, named));
        var outcome = computation.Compute(new Given(given));
        return outcome.Why is { } why
            ? judgement.Noting($"No arithmetic, for '{outcome.Refused!.Name}': {why}")
            : judgement with { Arithmetic = ComputationDocument.Of(computation, outcome, catalogue.MeaningsByComputation[computation.Name]) };
    }

    private static Dictionary<Input, object> Of(FindingReport finding, CheckArithmetic named, Computation computation, DateOnly asOf)
    {
        var given = new Dictionary<Input, object>(finding.With?.All ?? new Dictionary<Input, object>());
        foreach (var input in computation.Inputs)
        {
            if (named.With.TryGetValue(input.Name, out var word))
                given[input] = word;
            else if (input is DayInput)
                given[input] = finding.On ?? asOf;
            else if (input.Name == named.Input && Measured(finding, (NumberInput)input) is { } value)
                given[input] = value;
        }

        return given;
    }

    /// <summary>The measured value in the unit of the input; null where it lies outside what the formula holds for.</summary>
    private static double? Measured(FindingReport finding, NumberInput input) =>
        UnitConversion.ConvertAsRead(finding.Value!.Value, finding.Unit!, input.Unit ?? finding.Unit!) is { } converted
        && converted >= input.Least && converted <= input.Most
            ? converted
            : null;

    private static string Missing(IReadOnlyList<Input> missing, CheckArithmetic named) =>
        missing.OfType<NumberInput>().FirstOrDefault(input => input.Name == named.Input) is { } value
            ? FormattableString.Invariant($"The arithmetic holds from {value.Least} to {value.Most} {value.Unit}.")
            : $"With '{string.Join("', '", missing.Select(input => input.Name))}' given too, the arithmetic says more.";
}
