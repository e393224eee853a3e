using System.Text.Json;
using Advice.Knowledge.Words;

namespace AdviceService.Requests;

/// <summary>Reads the members of one object. The members that were asked for are the ones that it may have.</summary>
internal sealed class ObjectReader
{
    private readonly Dictionary<string, JsonElement> _members = new(StringComparer.Ordinal);
    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);

    /// <summary>Opens an object and notes the members that stand in it twice.</summary>
    public ObjectReader(JsonValue value)
    {
        (At, Errors) = (value.At, value.Errors);
        HashSet<string>? repeated = null;
        foreach (var member in value.Json.EnumerateObject())
        {
            if (!_members.TryAdd(member.Name, member.Value) && (repeated ??= []).Add(member.Name))
                Errors.BadShape(PointerTo(member.Name), ErrorCode.DuplicateMember, "The member stands twice in its object.");
        }
    }

    /// <summary>Where the object is.</summary>
    public JsonPointer At { get; }

    /// <summary>Where errors are noted.</summary>
    public ErrorList Errors { get; }

    /// <summary>Whether it has no member at all.</summary>
    public bool IsEmpty => _members.Count == 0;

    /// <summary>A member that may be there.</summary>
    public JsonValue? Take(string name)
    {
        _asked.Add(name);
        return _members.TryGetValue(name, out var json) ? new JsonValue(json, At.Member(name), Errors) : null;
    }

    /// <summary>A member that may be there; null and "unknown" say the same as its absence.</summary>
    public JsonValue? Known(string name) =>
        Take(name) is { } value && value.Json.ValueKind != JsonValueKind.Null
        && !(value.Json.ValueKind == JsonValueKind.String && value.Json.ValueEquals("unknown"u8))
            ? value
            : null;

    /// <summary>A member that must be there.</summary>
    public JsonValue? Required(string name)
    {
        var value = Take(name);
        if (value is null)
            Errors.BadShape(At.Member(name), ErrorCode.MissingMember, "Must be given.");
        return value;
    }

    /// <summary>Lets every member be, for an object of which nothing can be said.</summary>
    public void IgnoreUnread() => _asked.UnionWith(_members.Keys);

    /// <summary>Notes the members that nobody asked for.</summary>
    public void RefuseUnread()
    {
        foreach (var name in _members.Keys.Where(name => !_asked.Contains(name)))
        {
            Errors.BadShape(PointerTo(name), ErrorCode.UnknownMember, () => NearestWord.To(name, _asked) is { } near
                ? $"The object has no such member; nearest: {near}."
                : $"The object has no such member; it may have {string.Join(", ", _asked)}.");
        }
    }

    // A name of any length in the answer would let a caller choose the size of the answer.
    private JsonPointer PointerTo(string name) => name.Length <= JsonValue.LongestId ? At.Member(name) : At;
}
