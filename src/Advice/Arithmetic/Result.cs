using System.Globalization;

namespace Advice.Arithmetic;

/// <summary>One value that a computation gives.</summary>
/// <param name="Name">What it is, a name in camel case.</param>
/// <param name="Value">The number, to six significant digits; null where it is a text.</param>
/// <param name="Unit">Unit of the number; null = none.</param>
/// <param name="Text">The text, such as the name of a class; null where it is a number.</param>
public sealed record Result(string Name, double? Value, string? Unit, string? Text)
{
    /// <summary>A number.</summary>
    public static Result Of(string name, double value, string? unit = null) =>
        new(name, double.Parse(value.ToString("G6", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), unit, null);

    /// <summary>A text.</summary>
    public static Result Of(string name, string text) => new(name, null, null, text);
}
