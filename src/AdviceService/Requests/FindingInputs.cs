using Advice.Arithmetic;
using Advice.Knowledge.Checks;

namespace AdviceService.Requests;

/// <summary>Reads what a finding carries for the workshop arithmetic of its check, and nothing else.</summary>
/// <param name="check">The check; null where it is not known.</param>
internal sealed class FindingInputs(Check? check)
{
    /// <summary>The inputs that a finding of a check may carry, in the order of its computations; each name once.</summary>
    public static IReadOnlyList<Input> Of(Check check) =>
    [
        .. check.Arithmetic.SelectMany(named => Computations.Find(named.Computation)!.Inputs.Where(input => named.Asks.Contains(input.Name)))
            .DistinctBy(input => input.Name),
    ];

    /// <summary>Reads them.</summary>
    public Given? Read(ObjectReader with)
    {
        if (check is null)
        {
            with.IgnoreUnread();
            return null;
        }

        var (inputs, values) = (Of(check), new Dictionary<Input, object>());
        if (inputs.Count == 0)
        {
            with.IgnoreUnread();
            with.Errors.BadValue(with.At, ErrorCode.UnfitForCheck, "This check takes nothing beside its result.");
        }

        foreach (var input in inputs)
        {
            if (with.Take(input.Name) is { } value && InputValue.Read(value, input) is { } read)
                values[input] = read;
        }

        return new Given(values);
    }
}
