using Advice.Documents;
using Advice.Findings;

namespace AdviceService.Requests;

/// <summary>Reads a value with its unit.</summary>
/// <param name="units">The units that it may be given in.</param>
/// <param name="unit">The unit of the range.</param>
/// <param name="least">The smallest value.</param>
/// <param name="most">The largest value.</param>
internal sealed class QuantityPart(IReadOnlyList<string> units, string unit, double least, double most)
{
    /// <summary>A distance driven.</summary>
    public static QuantityPart Odometer { get; } = new(["km", "mi"], "km", 0, 3_000_000);

    /// <summary>The diameter of a steering wheel.</summary>
    public static QuantityPart WheelDiameter { get; } = new(["in", "mm", "cm"], "mm", 200, 700);

    /// <summary>The units that it may be given in.</summary>
    public IReadOnlyList<string> Units => units;

    /// <summary>Reads a quantity.</summary>
    public Quantity? Read(ObjectReader quantity) => Read(quantity, quantity.Required("value"));

    /// <summary>Reads a quantity that is unknown where its value is.</summary>
    public Quantity? ReadKnown(ObjectReader quantity) => Read(quantity, quantity.Known("value"));

    private Quantity? Read(ObjectReader quantity, JsonValue? given)
    {
        var value = given?.Number();
        var asked = given is null ? quantity.Known("unit") : quantity.Required("unit");
        if (asked?.OneOf(units) is not { } its || value is not { } number)
            return null;
        if (UnitConversion.Convert(number, its, unit) is not { } converted || converted < least || converted > most)
            given?.OutOfRange(least, most, unit);
        return new Quantity { Value = number, Unit = its };
    }
}
