using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;
using Advice.Vehicles;

namespace Advice.Rules.Checking;

/// <summary>Binds service items.</summary>
internal sealed class ServiceBinder(Tables tables, SourceBinder sources, ConditionBinder conditions, Problems problems)
{
    private static readonly string[] Members = ["id", "name", "plain", "system", "because", "intervals", "neverLate", "phrases", "source"];
    private static readonly string[] IntervalMembers = ["km", "years", "firstYears", "duty", "kinds", "jurisdiction", "vehicle", "source"];

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
        if (reader.Has("firstYears") && !reader.Has("years"))
            reader.Refuse(ErrorCode.MissingMember, "firstYears", "the time to the first one goes with 'years', the time from one to the next");
        var (duty, first, law) = (Duty(reader), reader.NumberOrNull("firstYears", 0.01, 50), reader.IdOrNull("jurisdiction", tables.Jurisdictions));
        var (kinds, when) = (Kinds(reader, duty), conditions.Read(reader));
        return sources.Required(reader) is { } source
            ? new Interval(km, years, duty, when, source) { FirstYears = first, Jurisdiction = law, Kinds = kinds }
            : null;
    }

    private string? Duty(EntryReader reader)
    {
        var duty = reader.TextOrNull("duty");
        if (duty is not null && tables.Facts.TryGet(Vehicle.Duty, out var duties) && !duties.Values.ContainsKey(duty))
            problems.AddNoValue(reader.At("duty"), duty, Vehicle.Duty, duties.Values.Keys);
        return duty;
    }

    private IReadOnlyList<string> Kinds(EntryReader reader, string? duty)
    {
        var kinds = reader.Texts("kinds");
        if (kinds.Count == 0)
            return kinds;
        if (!tables.Facts.TryGet(Vehicle.Duty, out var duties) || duties.Kinds.GetValueOrDefault(duty ?? "") is not { } known)
            reader.Refuse(ErrorCode.UnfitMember, "kinds", "'kinds' are those of a duty, and this interval names no duty that has any");
        else
            foreach (var kind in kinds.Except(known.Keys))
                problems.AddNoValue(reader.At("kinds"), kind, "kinds", known.Keys);
        return kinds;
    }
}
