namespace Advice.Arithmetic;

/// <summary>Several values of one kind in one unit, such as a reading for each cylinder.</summary>
/// <param name="Name">Name of the member.</param>
/// <param name="What">What they are.</param>
/// <param name="Unit">The unit that the computation counts in; null = plain numbers.</param>
/// <param name="Least">The smallest value, in that unit.</param>
/// <param name="Most">The largest.</param>
/// <param name="Fewest">The fewest values.</param>
/// <param name="MostValues">The most values.</param>
public sealed record SeriesInput(string Name, string What, string? Unit, double Least, double Most, int Fewest, int MostValues) : Input(Name, What);
