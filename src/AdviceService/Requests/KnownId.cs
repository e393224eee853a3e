using System.Collections.Frozen;
using Advice.Knowledge.Words;

namespace AdviceService.Requests;

/// <summary>Reads ids of the rule set.</summary>
internal static class KnownId
{
    private const int FewEnoughToList = 12;

    /// <summary>The entry of an id; the nearest ids are offered where there is none.</summary>
    /// <param name="value">The id.</param>
    /// <param name="known">The entries.</param>
    /// <param name="noun">What they are, for messages.</param>
    public static T? Entry<T>(this JsonValue value, FrozenDictionary<string, T> known, string noun)
        where T : class
    {
        if (value.Text(JsonValue.LongestId) is not { } id)
            return null;
        if (known.TryGetValue(id, out var entry))
            return entry;
        value.Errors.BadValue(value.At, ErrorCode.UnknownId, () => Detail(id, known.Keys, noun));
        return null;
    }

    private static string Detail(string id, IReadOnlyCollection<string> known, string noun)
    {
        if (known.Count <= FewEnoughToList)
            return $"No known {noun}; there are {string.Join(", ", known.Order(StringComparer.Ordinal))}.";
        var near = NearestWord.Ids(id, known);
        return near.Count > 0 ? $"No known {noun}; nearest: {string.Join(", ", near)}." : $"No known {noun}, and none is near it.";
    }
}
