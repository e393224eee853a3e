namespace Advice.Arithmetic;

/// <summary>A number: with its unit where it has a dimension, plain where it has none.</summary>
/// <param name="Name">Name of the member.</param>
/// <param name="What">What it is.</param>
/// <param name="Unit">The unit that the computation counts in; null = a plain number.</param>
/// <param name="Least">The smallest value that the formula holds for, in that unit.</param>
/// <param name="Most">The largest.</param>
public sealed record NumberInput(string Name, string What, string? Unit, double Least, double Most) : Input(Name, What);
