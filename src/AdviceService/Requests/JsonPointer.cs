using System.Globalization;

namespace AdviceService.Requests;

/// <summary>A place in a JSON document; its text, an RFC 6901 JSON Pointer, is made only when it is asked for.</summary>
internal sealed class JsonPointer
{
    private readonly JsonPointer? _parent;
    private readonly string? _member;
    private readonly int _index;

    private JsonPointer(JsonPointer? parent, string? member, int index) => (_parent, _member, _index) = (parent, member, index);

    /// <summary>The whole document.</summary>
    public static JsonPointer Root { get; } = new(null, null, 0);

    /// <summary>A member of the object here.</summary>
    public JsonPointer Member(string name) => new(this, name, 0);

    /// <summary>An element of the list here, from 0.</summary>
    public JsonPointer Element(int index) => new(this, null, index);

    /// <inheritdoc/>
    public override string ToString() => _parent is null ? "" : $"{_parent}/{Token}";

    private string Token => _member is null
        ? _index.ToString(CultureInfo.InvariantCulture)
        : _member.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);
}
