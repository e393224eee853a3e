using Advice.Knowledge.Limits;

namespace Advice.Arithmetic;

/// <summary>A piece of workshop arithmetic as callers see it: what it takes, what it gives, by which formula and on whose word.</summary>
/// <param name="Name">Its name, lower-case words joined by hyphens.</param>
/// <param name="Title">What it computes.</param>
/// <param name="Formula">The formula or the rule.</param>
/// <param name="Sources">Where formula and figures come from.</param>
/// <param name="Inputs">What it takes.</param>
/// <param name="Compute">The computation.</param>
public sealed record Computation(
    string Name, string Title, string Formula, IReadOnlyList<Source> Sources, IReadOnlyList<Input> Inputs, Func<Given, Outcome> Compute)
{
    /// <summary>The classes that it can give, mildest first; empty where it gives none.</summary>
    public IReadOnlyList<string> Verdicts { get; init; } = [];

    /// <summary>Results that are what would have been read under the conditions of the limits, such as another temperature.</summary>
    public IReadOnlyList<string> Corrects { get; init; } = [];
}
