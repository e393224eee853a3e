using System.Globalization;
using System.Text.Json;

namespace AdviceService.Requests;

/// <summary>Reads texts, words, truths, numbers and days.</summary>
internal static class JsonScalars
{
    /// <summary>A text of at most so many characters.</summary>
    public static string? Text(this JsonValue value, int longest)
    {
        if (value.Json.ValueKind != JsonValueKind.String)
            return value.WrongType<string>("a string");
        var text = value.Json.GetString()!;
        // A surrogate pair is one character, as in JSON Schema.
        var tooLong = text.Length > longest && text.EnumerateRunes().Count() > longest;
        var hasNull = text.Contains('\0', StringComparison.Ordinal);
        if (tooLong)
            value.Errors.BadValue(value.At, ErrorCode.TooLong, $"Must have at most {longest} characters.");
        if (hasNull)
            value.Errors.BadShape(value.At, ErrorCode.NullCharacter, "The character U+0000 is not allowed.");
        return tooLong || hasNull ? null : text;
    }

    /// <summary>A word of a closed list.</summary>
    public static string? OneOf(this JsonValue value, IReadOnlyList<string> words)
    {
        if (value.Json.ValueKind != JsonValueKind.String)
            return value.WrongType<string>("a string");
        var word = value.Json.GetString()!;
        if (words.Contains(word))
            return word;
        value.Errors.BadShape(value.At, ErrorCode.UnknownWord, () => $"Must be one of {string.Join(", ", words)}.");
        return null;
    }

    /// <summary>True or false.</summary>
    public static bool? Truth(this JsonValue value) => value.Json.ValueKind switch
    {
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => value.WrongTypeOf<bool>("true or false"),
    };

    /// <summary>Any number that is finite.</summary>
    public static double? Number(this JsonValue value)
    {
        if (value.Json.ValueKind != JsonValueKind.Number)
            return value.WrongTypeOf<double>("a number");
        if (value.Json.GetDouble() is var number && double.IsFinite(number))
            return number;
        value.Errors.BadValue(value.At, ErrorCode.OutOfRange, "The number is too large.");
        return null;
    }

    /// <summary>A whole number in a range; 8.0 is one.</summary>
    public static int? Integer(this JsonValue value, int least, int most)
    {
        if (value.Json.ValueKind != JsonValueKind.Number)
            return value.WrongTypeOf<int>("an integer");
        // What is too large comes as infinity, which is in no range.
        var number = value.Json.GetDouble();
        if (double.IsFinite(number) && number != Math.Truncate(number))
        {
            value.Errors.BadShape(value.At, ErrorCode.WrongType, "Must be an integer, without a fraction.");
            return null;
        }

        if (number >= least && number <= most)
            return (int)number;
        value.OutOfRange(least, most);
        return null;
    }

    /// <summary>A day in a range, written yyyy-MM-dd.</summary>
    public static DateOnly? Date(this JsonValue value, DateOnly earliest, DateOnly latest)
    {
        if (value.Json.ValueKind != JsonValueKind.String)
            return value.WrongTypeOf<DateOnly>("a string with a day, yyyy-MM-dd");
        if (!DateOnly.TryParseExact(value.Json.GetString(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            value.Errors.BadShape(value.At, ErrorCode.InvalidDate, "Must be a day of the calendar, written yyyy-MM-dd.");
            return null;
        }

        if (day >= earliest && day <= latest)
            return day;
        value.Errors.BadValue(value.At, ErrorCode.OutOfRange, FormattableString.Invariant($"Must be between {earliest:yyyy-MM-dd} and {latest:yyyy-MM-dd}."));
        return null;
    }
}
