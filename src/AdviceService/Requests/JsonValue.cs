using System.Globalization;
using System.Text.Json;

namespace AdviceService.Requests;

/// <summary>A value of the request with its place. Whatever is wrong is noted and read as null, so that reading goes on.</summary>
internal readonly record struct JsonValue(JsonElement Json, JsonPointer At, ErrorList Errors)
{
    /// <summary>The most characters of an id.</summary>
    public const int LongestId = 100;

    /// <summary>A text of at most so many characters.</summary>
    public string? Text(int longest)
    {
        if (Json.ValueKind != JsonValueKind.String)
            return WrongType<string>("a string");
        var text = Json.GetString()!;
        if (text.Contains('\0', StringComparison.Ordinal))
            Errors.BadShape(At, ErrorCode.NullCharacter, "The character U+0000 is not allowed.");
        // A surrogate pair is one character, as in JSON Schema.
        if (text.Length > longest && text.EnumerateRunes().Count() > longest)
            Errors.BadValue(At, ErrorCode.TooLong, Invariant($"Must have at most {longest:N0} characters."));
        return text;
    }

    /// <summary>A word of a closed list.</summary>
    public string? OneOf(IReadOnlyList<string> words)
    {
        if (Json.ValueKind != JsonValueKind.String)
            return WrongType<string>($"one of the strings {string.Join(", ", words)}");
        var word = Json.GetString()!;
        if (words.Contains(word))
            return word;
        Errors.BadShape(At, ErrorCode.UnknownWord, () => $"Must be one of {string.Join(", ", words)}.");
        return null;
    }

    /// <summary>True or false.</summary>
    public bool? Truth() => Json.ValueKind switch
    {
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => WrongTypeOf<bool>("true or false"),
    };

    /// <summary>A number in a range; any finite number where none is given.</summary>
    public double? Number(double least = double.MinValue, double most = double.MaxValue)
    {
        if (Json.ValueKind != JsonValueKind.Number)
            return WrongTypeOf<double>("a number");
        // What is too large for a double comes as infinity, which is in no range.
        var number = Json.GetDouble();
        if (number >= least && number <= most)
            return number;
        if (least == double.MinValue)
            Errors.BadValue(At, ErrorCode.OutOfRange, "The number is too large.");
        else
            OutOfRange(least, most);
        return null;
    }

    /// <summary>A whole number in a range; 8.0 is one.</summary>
    public int? Integer(int least, int most)
    {
        if (Json.ValueKind != JsonValueKind.Number)
            return WrongTypeOf<int>("an integer");
        var number = Json.GetDouble();
        if (double.IsFinite(number) && number != Math.Truncate(number))
            return WrongTypeOf<int>("an integer");
        if (number >= least && number <= most)
            return (int)number;
        OutOfRange(least, most);
        return null;
    }

    /// <summary>A day in a range, written yyyy-MM-dd.</summary>
    public DateOnly? Date(DateOnly earliest, DateOnly latest)
    {
        if (Json.ValueKind != JsonValueKind.String)
            return WrongTypeOf<DateOnly>("a string with a day, yyyy-MM-dd");
        if (!DateOnly.TryParseExact(Json.GetString(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            Errors.BadShape(At, ErrorCode.InvalidDate, "Must be a day of the calendar, written yyyy-MM-dd.");
            return null;
        }

        if (day >= earliest && day <= latest)
            return day;
        Errors.BadValue(At, ErrorCode.OutOfRange, Invariant($"Must be between {earliest:yyyy-MM-dd} and {latest:yyyy-MM-dd}."));
        return null;
    }

    /// <summary>A list of at most so many elements.</summary>
    public IReadOnlyList<T> List<T>(int most, Func<JsonValue, T?> read)
        where T : class
    {
        if (Json.ValueKind != JsonValueKind.Array)
            return WrongType<IReadOnlyList<T>>("a list") ?? [];
        if (Json.GetArrayLength() > most)
            Errors.BadValue(At, ErrorCode.TooMany, Invariant($"Must have at most {most} elements."));
        var items = new List<T>();
        var index = 0;
        foreach (var element in Json.EnumerateArray().Take(most))
        {
            if (read(new JsonValue(element, At.Element(index++), Errors)) is { } item)
                items.Add(item);
        }

        return items;
    }

    /// <summary>A list of objects.</summary>
    public IReadOnlyList<T> ObjectList<T>(int most, Func<ObjectReader, T?> read)
        where T : class => List(most, element => element.Object(read));

    /// <summary>An object; members that are not read are refused.</summary>
    public T? Object<T>(Func<ObjectReader, T?> read)
        where T : class
    {
        if (Json.ValueKind != JsonValueKind.Object)
            return WrongType<T>("an object");
        var reader = new ObjectReader(this);
        var value = read(reader);
        reader.RefuseUnread();
        return value;
    }

    /// <summary>Notes that the number is out of its range.</summary>
    public void OutOfRange(double least, double most, string? unit = null) =>
        Errors.BadValue(At, ErrorCode.OutOfRange, Invariant($"Must be between {least:0.#####} and {most:0.#####}{(unit is null ? null : $" {unit}")}."));

    /// <summary>Notes that another type is wanted.</summary>
    public T? WrongType<T>(string wanted)
        where T : class
    {
        var (at, given) = (At, Json.ValueKind);
        Errors.BadShape(at, ErrorCode.WrongType, () => $"Must be {wanted}, not {Name(given)}.");
        return null;
    }

    private T? WrongTypeOf<T>(string wanted)
        where T : struct
    {
        WrongType<object>(wanted);
        return null;
    }

    private static string Name(JsonValueKind kind) => kind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a string",
        JsonValueKind.Number => "a number",
        JsonValueKind.Null => "null",
        _ => "true or false",
    };

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
