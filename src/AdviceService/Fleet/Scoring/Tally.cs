using System.Text.Json;
using Advice.Knowledge;

namespace AdviceService.Fleet.Scoring;

/// <summary>What the replies of a fleet add up to.</summary>
/// <param name="partsByFault">The parts that faults call for.</param>
internal sealed class Tally(ILookup<string, Part> partsByFault)
{
    /// <summary>Vehicles answered.</summary>
    public int Answers { get; private set; }

    /// <summary>Lines answered with a problem.</summary>
    public int Problems { get; private set; }

    /// <summary>Vehicles by driving advice.</summary>
    public SortedDictionary<string, int> Driving { get; } = new(StringComparer.Ordinal);

    /// <summary>Vehicles by days within which they should be seen; -1 = at the next service.</summary>
    public SortedDictionary<int, int> WithinDays { get; } = [];

    /// <summary>How often a check is among the first three.</summary>
    public Dictionary<string, int> Checks { get; } = new(StringComparer.Ordinal);

    /// <summary>How often a fault is among the three most probable.</summary>
    public Dictionary<string, int> Faults { get; } = new(StringComparer.Ordinal);

    /// <summary>How often one of the three most probable faults calls for a part.</summary>
    public Dictionary<string, int> Parts { get; } = new(StringComparer.Ordinal);

    /// <summary>Time of all steps, min.</summary>
    public long Minutes { get; private set; }

    /// <summary>The most frequent of a count, ties by id.</summary>
    public static IReadOnlyList<KeyValuePair<string, int>> Top(Dictionary<string, int> counts, int most) =>
        [.. counts.OrderByDescending(one => one.Value).ThenBy(one => one.Key, StringComparer.Ordinal).Take(most)];

    /// <summary>Adds a reply, in full or as triage.</summary>
    public void Add(ReadOnlyMemory<byte> utf8Json)
    {
        using var reply = JsonDocument.Parse(utf8Json);
        if (reply.RootElement.TryGetProperty("triage", out var triage))
            Add(triage.GetProperty("driving"), triage, Texts(triage.GetProperty("checks")), Texts(triage.GetProperty("faults")));
        else if (reply.RootElement.TryGetProperty("advice", out var advice))
            Add(advice.GetProperty("driving").GetProperty("advice"), advice.GetProperty("appointment"), Texts(advice.GetProperty("steps"), "check"), Texts(advice.GetProperty("suspects"), "fault").Distinct());
        else
            Problems++;
    }

    private void Add(JsonElement driving, JsonElement appointment, IEnumerable<string> checks, IEnumerable<string> faults)
    {
        const int Most = 3;
        Answers++;
        Minutes += appointment.GetProperty("minutes").GetInt32();
        Count(Driving, driving.GetString()!);
        Count(WithinDays, appointment.GetProperty("withinDays") is { ValueKind: JsonValueKind.Number } days ? days.GetInt32() : -1);
        foreach (var check in checks.Take(Most))
            Count(Checks, check);
        var likeliest = faults.Take(Most).ToList();
        foreach (var fault in likeliest)
            Count(Faults, fault);
        foreach (var part in likeliest.SelectMany(fault => partsByFault[fault]).Select(part => part.Id).Distinct())
            Count(Parts, part);
    }

    private static void Count<T>(IDictionary<T, int> counts, T key) => counts[key] = counts.TryGetValue(key, out var so) ? so + 1 : 1;

    private static IEnumerable<string> Texts(JsonElement ids) => ids.EnumerateArray().Select(id => id.GetString()!);

    private static IEnumerable<string> Texts(JsonElement list, string member) => list.EnumerateArray().Select(one => one.GetProperty(member).GetString()!);
}
