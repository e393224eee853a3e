using System.Text.Json;

namespace AdviceService.Requests;

/// <summary>A value of the request with its place. Whatever is wrong is noted and read as null, so that reading goes on.</summary>
internal readonly record struct JsonValue(JsonElement Json, JsonPointer At, ErrorList Errors)
{
    /// <summary>The most characters of an id.</summary>
    public const int LongestId = 100;

    /// <summary>A list of at most so many elements.</summary>
    public IReadOnlyList<T> List<T>(int most, Func<JsonValue, T?> read)
        where T : class
    {
        if (Json.ValueKind != JsonValueKind.Array)
            return WrongType<IReadOnlyList<T>>("a list") ?? [];
        if (Json.GetArrayLength() > most)
            Errors.BadValue(At, ErrorCode.TooMany, $"Must have at most {most} elements.");
        var (items, index) = (new List<T>(), 0);
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
    public void OutOfRange(double least, double most, string? unit = null) => Errors.BadValue(
        At, ErrorCode.OutOfRange, FormattableString.Invariant($"Must be between {least:0.#####} and {most:0.#####}{(unit is null ? null : $" {unit}")}."));

    /// <summary>Notes that another type is wanted.</summary>
    public T? WrongType<T>(string wanted)
        where T : class
    {
        Errors.BadShape(At, ErrorCode.WrongType, $"Must be {wanted}, not {Given}.");
        return null;
    }

    /// <summary>The same where the value would not be an object.</summary>
    public T? WrongTypeOf<T>(string wanted)
        where T : struct
    {
        WrongType<object>(wanted);
        return null;
    }

    private string Given => Json.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a string",
        JsonValueKind.Number => "a number",
        JsonValueKind.Null => "null",
        _ => "true or false",
    };
}
