using Advice.Arithmetic;

namespace AdviceService.Requests;

/// <summary>Reads what a caller gives to a computation: a member for each input, and nothing else.</summary>
/// <param name="computation">The computation.</param>
/// <param name="today">The day that counts where none is named.</param>
internal sealed class ComputationPart(Computation computation, DateOnly today)
{
    /// <summary>Reads it.</summary>
    public Given Read(ObjectReader body)
    {
        var values = new Dictionary<Input, object>();
        foreach (var input in computation.Inputs)
        {
            var value = input.IsRequired ? body.Required(input.Name) : body.Take(input.Name);
            if ((value is { } given ? InputValue.Read(given, input) : input is DayInput { Past: false } ? today : null) is { } read)
                values[input] = read;
        }

        return new Given(values);
    }
}
