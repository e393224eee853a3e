using Advice.Arithmetic;
using Advice.Documents.Judgements;
using Advice.Documents.Requests;
using Advice.Findings;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Words;

namespace Advice.Judging;

/// <summary>Puts a finding through the workshop arithmetic that its check names.</summary>
public sealed class FindingArithmetic(Catalogue catalogue)
{
    /// <summary>The judgement with what each piece of arithmetic gives; nothing of one for which nothing was given, and the reason where the inputs
    /// do not suffice or do not go together.</summary>
    /// <param name="judgement">The judgement on the finding.</param>
    /// <param name="finding">The finding.</param>
    /// <param name="case">The vehicle, and the day that counts where the finding has none.</param>
    public JudgementDocument Beside(JudgementDocument judgement, FindingReport finding, Case @case) =>
        catalogue.Checks[finding.Check].Arithmetic.Aggregate(judgement, (so, named) => Beside(so, named, finding, @case));

    /// <summary>What would have been read under the conditions of the limits; null where the check corrects nothing or too little was given for it.</summary>
    /// <param name="finding">The finding, with a value.</param>
    /// <param name="case">The vehicle, and the day.</param>
    public Result? AtLimit(FindingReport finding, Case @case)
    {
        if (catalogue.Checks[finding.Check].Arithmetic.FirstOrDefault(one => one.Judges is not null) is not { } named || !IsCarried(named, finding))
            return null;
        var computation = Computations.Find(named.Computation)!;
        var given = Of(finding, named, computation, @case);
        return computation.Inputs.Any(input => (input.IsRequired || input.Name == named.Input) && !given.ContainsKey(input)) ? null
            : computation.Compute(new Given(given)).Results.FirstOrDefault(result => result.Name == named.Judges);
    }

    /// <summary>What would be right of a measured value that cannot be true beside what its finding carries; null where all is possible.</summary>
    public static string? Impossible(Check check, FindingReport finding) => check.Arithmetic.Where(named => named.Input is not null && IsCarried(named, finding))
        .Select(named => (Computation: Computations.Find(named.Computation)!, Given: Stated(finding, named)))
        .Where(one => one.Computation.Inputs.All(input => !input.IsRequired || one.Given.ContainsKey(input)))
        .Select(one => one.Computation.Compute(new Given(one.Given))).FirstOrDefault(outcome => outcome.IsImpossible)?.Why;

    private JudgementDocument Beside(JudgementDocument judgement, CheckArithmetic named, FindingReport finding, Case @case)
    {
        var carried = IsCarried(named, finding);
        if (named.Input is null && !carried)
            return judgement;
        var computation = Computations.Find(named.Computation)!;
        var given = Of(finding, named, computation, @case);
        if (computation.Inputs.OfType<NumberInput>().FirstOrDefault(input => input.Name == named.Input && !given.ContainsKey(input)) is { } measured)
            return judgement.Noting(Say(Sentences.ArithmeticHolds, measured.Least, FormattableString.Invariant($"{measured.Most} {measured.Unit}")));
        var missing = computation.Inputs.Where(input => input.IsRequired && !given.ContainsKey(input)).Select(input => $"'{input.Name}'").ToList();
        if (missing.Count > 0)
            return missing.Count > 1 && !carried ? judgement : judgement.Noting(Say(Sentences.ArithmeticWants, string.Join(", ", missing)));
        var outcome = computation.Compute(new Given(given));
        return outcome.Why is { } why
            ? judgement.Noting(Say(Sentences.NoArithmetic, outcome.Refused!.Name, why))
            : judgement with { Arithmetic = [.. judgement.Arithmetic, ComputationDocument.Of(computation, outcome, catalogue, @case.Workshop.Reader)] };

        string Say(Sentence sentence, params ReadOnlySpan<object?> slots) => catalogue.Say(@case.Workshop.Reader, sentence, slots);
    }

    private static bool IsCarried(CheckArithmetic named, FindingReport finding) => finding.With?.All.Keys.Any(input => named.Asks.Contains(input.Name)) == true;

    /// <summary>What the finding states, and what the day and the vehicle tell.</summary>
    private Dictionary<Input, object> Of(FindingReport finding, CheckArithmetic named, Computation computation, Case @case)
    {
        var given = Stated(finding, named);
        foreach (var input in computation.Inputs.Where(input => !given.ContainsKey(input)))
        {
            if (input is DayInput { Past: false })
                given[input] = finding.On ?? @case.AsOf;
            else if (named.Facts.TryGetValue(input.Name, out var fact) && @case.Vehicle.Word(fact) is { } known)
                given[input] = catalogue.Facts[fact].Values[known];
        }

        return given;
    }

    private static Dictionary<Input, object> Stated(FindingReport finding, CheckArithmetic named)
    {
        var carried = finding.With?.All.Where(one => named.Asks.Contains(one.Key.Name)).ToDictionary(one => one.Key.Name, one => one.Value) ?? [];
        var given = new Dictionary<Input, object>();
        foreach (var input in Computations.Find(named.Computation)!.Inputs)
        {
            if (named.With.TryGetValue(input.Name, out var word))
                given[input] = word;
            else if (input.Name == named.Input && Measured(finding, (NumberInput)input) is { } value)
                given[input] = value;
            else if (carried.TryGetValue(input.Name, out var own) && IsWithin(own, input))
                given[input] = own;
        }

        return given;
    }

    /// <summary>What is carried for two computations was read in the range of the first.</summary>
    private static bool IsWithin(object value, Input input) => input is not NumberInput bounds || (value is double number && number >= bounds.Least && number <= bounds.Most);

    /// <summary>The measured value in the unit of the input; null where it lies outside what the formula holds for.</summary>
    private static double? Measured(FindingReport finding, NumberInput input) =>
        UnitConversion.ConvertAsRead(finding.Value!.Value, finding.Unit!, input.Unit ?? finding.Unit!) is { } converted
        && converted >= input.Least && converted <= input.Most
            ? converted
            : null;
}
