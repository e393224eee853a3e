using Advice.Knowledge;

namespace Advice.Rules.Checking;

/// <summary>Binds service items.</summary>
internal sealed class ServiceBinder(Tables tables, SourceBinder sources, ConditionBinder conditions, Problems problems)
{
    private static readonly string[] Members = ["id", "name", "plain", "system", "because", "intervals", "neverLate", "phrases", "source"];
    private static readonly string[] IntervalMembers = ["km", "years", "duty", "vehicle", "source"];

    /// <summary>Binds all entries.</summary>
    public void BindAll(IReadOnlyList<Entry> entries)
    {
        foreach (var (id, node) in entries)
            tables.Services.Bind(id, Service(id, new EntryReader(node, "service item", Members, problems)));
    }

    private ServiceItem Service(string id, EntryReader reader)
    {
        sources.Optional(reader);
        var because = reader.Text("because");
        var intervals = reader.Has("intervals") ? reader.Inners("intervals", "interval", IntervalMembers).Select(Interval).ToList() : [];
        return new ServiceItem(
            id, reader.TextPair("name"), reader.Id("system", tables.Systems), new Text(because, because), [.. intervals.OfType<Interval>()],
            reader.Has("neverLate") ? conditions.Read(reader, "neverLate") : null)
        {
            Phrases = reader.Texts("phrases"),
        };
    }

    private Interval? Interval(EntryReader reader)
    {
        var (km, years) = (reader.NumberOrNull("km", 100, 1_000_000), reader.NumberOrNull("years", 0.01, 50));
        if (!reader.Has("km") && !reader.Has("years"))
            problems.Add(ErrorCode.MissingMember, reader.Place, "an interval needs 'km', 'years' or both");
        var duty = reader.TextOrNull("duty");
        if (duty is not null && tables.Facts.TryGet("duty", out var duties) && !duties.Values.ContainsKey(duty))
            problems.AddNoValue(reader.At("duty"), duty, "duty", duties.Values.Keys);
        var when = conditions.Read(reader);
        return sources.Required(reader) is { } source ? new Interval(km, years, duty, when, source) : null;
    }
}
