using Advice.Arithmetic;

namespace Advice.Tests.Arithmetic;

/// <summary>A computation by its name, fed as a caller would in the unit that it counts in.</summary>
internal static class Computed
{
    public static Computation Named(string name) => Computations.All.Single(computation => computation.Name == name);

    public static Outcome By(string name, params (string Input, object Value)[] values)
    {
        var inputs = Named(name).Inputs.ToDictionary(input => input.Name);
        return Named(name).Compute(new Given(values.ToDictionary(value => inputs[value.Input], value => value.Value)));
    }

    /// <summary>One number of the outcome.</summary>
    public static double Number(this Outcome outcome, string result) => outcome.Results.Single(one => one.Name == result).Value!.Value;

    /// <summary>One text of the outcome.</summary>
    public static string Text(this Outcome outcome, string result) => outcome.Results.Single(one => one.Name == result).Text!;
}
