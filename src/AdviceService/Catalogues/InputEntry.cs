using Advice.Arithmetic;
using Advice.Findings;

namespace AdviceService.Catalogues;

/// <summary>What a computation takes.</summary>
public sealed record InputEntry
{
    /// <summary>Name of the member.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required string What { get; init; }

    /// <summary>number, series, points, word, text or day.</summary>
    public required string Kind { get; init; }

    /// <summary>Whether it must be given.</summary>
    public required bool Required { get; init; }

    /// <summary>Units that it may be given in; empty = a plain number, or no number.</summary>
    public IReadOnlyList<string> Units { get; init; } = [];

    /// <summary>Unit of the bounds; null = none.</summary>
    public string? Unit { get; init; }

    /// <summary>Smallest value that the formula holds for.</summary>
    public double? Least { get; init; }

    /// <summary>Largest value.</summary>
    public double? Most { get; init; }

    /// <summary>The words, of a word.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>A text of the form, of a text.</summary>
    public string? Example { get; init; }

    /// <summary>The coordinates, of points.</summary>
    public IReadOnlyList<InputEntry> Coordinates { get; init; } = [];

    /// <summary>The entry of an input.</summary>
    public static InputEntry Of(Input input)
    {
        var entry = new InputEntry { Name = input.Name, What = input.What, Kind = "", Required = input.IsRequired };
        return input switch
        {
            NumberInput number => entry with { Kind = "number", Units = Accepted(number.Unit), Unit = number.Unit, Least = number.Least, Most = number.Most },
            SeriesInput series => entry with { Kind = "series", Units = Accepted(series.Unit), Unit = series.Unit, Least = series.Least, Most = series.Most },
            PointsInput points => entry with { Kind = "points", Coordinates = [Of(points.X), Of(points.Y)] },
            WordInput word => entry with { Kind = "word", Words = word.Words },
            TextInput text => entry with { Kind = "text", Example = text.Example },
            _ => entry with { Kind = "day" },
        };
    }

    private static IReadOnlyList<string> Accepted(string? unit) => unit is null ? [] : UnitConversion.Accepted(unit);
}
