namespace Advice.Arithmetic;

/// <summary>A list of points, such as a trace of volts over seconds. The names of the coordinates say their units.</summary>
/// <param name="Name">Name of the member.</param>
/// <param name="What">What it shows.</param>
/// <param name="X">The first coordinate, a plain number.</param>
/// <param name="Y">The second.</param>
/// <param name="Fewest">The fewest points.</param>
/// <param name="MostPoints">The most points.</param>
/// <param name="Ascending">Whether the first coordinate must grow from point to point.</param>
public sealed record PointsInput(string Name, string What, NumberInput X, NumberInput Y, int Fewest, int MostPoints, bool Ascending) : Input(Name, What);
