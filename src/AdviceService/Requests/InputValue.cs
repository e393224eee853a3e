using Advice.Arithmetic;
using Advice.Findings;

namespace AdviceService.Requests;

/// <summary>Reads one input of a computation, into the unit that the computation counts in.</summary>
internal static class InputValue
{
    internal const int LongestText = 40;

    /// <summary>Reads it; null where it is wrong.</summary>
    public static object? Read(JsonValue value, Input input) => input switch
    {
        NumberInput number => Number(value, number),
        SeriesInput series => Series(value, series),
        PointsInput points => Points(value, points),
        WordInput word => value.OneOf(word.Words),
        TextInput text => Text(value, text),
        _ => value.Date(AdvicePart.Earliest, AdvicePart.Latest),
    };

    private static double? Number(JsonValue value, NumberInput input)
    {
        if (input.Unit is not { } unit)
            return Within(value, input.Least, input.Most, null);
        var part = new QuantityPart(UnitConversion.Accepted(unit), unit, input.Least, input.Most);
        return value.Object(part.Read) is { } quantity ? UnitConversion.ConvertAsRead(quantity.Value, quantity.Unit, unit) : null;
    }

    private static List<double>? Series(JsonValue value, SeriesInput input)
    {
        if (input.Unit is not { } unit)
            return Numbers(value, input, null, null);
        List<double>? numbers = null;
        value.Object<object>(series =>
        {
            var its = series.Required("unit")?.OneOf(UnitConversion.Accepted(unit));
            numbers = series.Required("values") is { } values && its is not null ? Numbers(values, input, its, unit) : null;
            return null;
        });
        return numbers;
    }

    private static List<double> Numbers(JsonValue list, SeriesInput input, string? from, string? to)
    {
        var numbers = list.List(input.MostValues, element => element.Number() is { } number
            ? (object?)Checked(element, from is null ? number : UnitConversion.ConvertAsRead(number, from, to!)!.Value, input.Least, input.Most, to)
            : null);
        TooFew(list, numbers.Count, input.Fewest);
        return [.. numbers.Cast<double>()];
    }

    private static List<(double X, double Y)> Points(JsonValue list, PointsInput input)
    {
        double? last = null;
        var points = list.ObjectList(input.MostPoints, point =>
        {
            var (x, y) = (point.Required(input.X.Name), point.Required(input.Y.Name));
            var pair = (X: x is { } first ? Within(first, input.X.Least, input.X.Most, null) : null, Y: y is { } second ? Within(second, input.Y.Least, input.Y.Most, null) : null);
            if (input.Ascending && pair.X <= last)
                x!.Value.Errors.BadValue(x.Value.At, ErrorCode.OutOfRange, "Must be above that of the point before.");
            last = pair.X ?? last;
            return pair is (double px, double py) ? (object)(px, py) : null;
        });
        TooFew(list, points.Count, input.Fewest);
        return [.. points.Cast<(double, double)>()];
    }

    private static string? Text(JsonValue value, TextInput input)
    {
        if (value.Text(LongestText) is not { } text)
            return null;
        if (input.Form.IsMatch(text))
            return text;
        value.Errors.BadValue(value.At, ErrorCode.WrongForm, $"Must have the form of {input.Example}.");
        return null;
    }

    private static double? Within(JsonValue value, double least, double most, string? unit) =>
        value.Number() is { } number ? Checked(value, number, least, most, unit) : null;

    private static double? Checked(JsonValue value, double number, double least, double most, string? unit)
    {
        if (number >= least && number <= most)
            return number;
        value.OutOfRange(least, most, unit);
        return null;
    }

    private static void TooFew(JsonValue list, int count, int fewest)
    {
        if (list.Json.ValueKind == System.Text.Json.JsonValueKind.Array && list.Json.GetArrayLength() < fewest && count < fewest)
            list.Errors.BadValue(list.At, ErrorCode.TooFew, $"Must have at least {fewest} elements.");
    }
}
