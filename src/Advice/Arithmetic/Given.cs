namespace Advice.Arithmetic;

/// <summary>What a caller gave to a computation, each value in the unit and range of its input.</summary>
/// <param name="values">Number as double, series as list of double, points as list of pairs, word and text as string, day as DateOnly.</param>
public sealed class Given(IReadOnlyDictionary<Input, object> values)
{
    /// <summary>A number that must be there.</summary>
    public double this[NumberInput input] => (double)values[input];

    /// <summary>The values of a series.</summary>
    public IReadOnlyList<double> this[SeriesInput input] => (IReadOnlyList<double>)values[input];

    /// <summary>The points of a list.</summary>
    public IReadOnlyList<(double X, double Y)> this[PointsInput input] => (IReadOnlyList<(double, double)>)values[input];

    /// <summary>A word that must be there.</summary>
    public string this[WordInput input] => (string)values[input];

    /// <summary>A text that must be there.</summary>
    public string this[TextInput input] => (string)values[input];

    /// <summary>A day.</summary>
    public DateOnly this[DayInput input] => (DateOnly)values[input];

    /// <summary>Whether it was given.</summary>
    public bool Has(Input input) => values.ContainsKey(input);

    /// <summary>Everything that was given.</summary>
    public IReadOnlyDictionary<Input, object> All => values;

    /// <summary>A number, or null where it was left out.</summary>
    public double? Maybe(NumberInput input) => values.TryGetValue(input, out var value) ? (double)value : null;

    /// <summary>A word, or null where it was left out.</summary>
    public string? Maybe(WordInput input) => values.GetValueOrDefault(input) as string;

    /// <summary>A text, or null where it was left out.</summary>
    public string? Maybe(TextInput input) => values.GetValueOrDefault(input) as string;

    /// <summary>A day, or null where it was left out.</summary>
    public DateOnly? Maybe(DayInput input) => values.TryGetValue(input, out var value) ? (DateOnly)value : null;

    /// <summary>The values of a series, or none where it was left out.</summary>
    public IReadOnlyList<double> Maybe(SeriesInput input) => Has(input) ? this[input] : [];

    /// <summary>The points, or none where they were left out.</summary>
    public IReadOnlyList<(double X, double Y)> Maybe(PointsInput input) => Has(input) ? this[input] : [];
}
