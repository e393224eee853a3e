using Advice.Knowledge;
using Advice.Knowledge.Limits;

namespace Advice.Rules.Checking;

/// <summary>Binds faults.</summary>
internal sealed class FaultBinder(Tables tables, SourceBinder sources, Problems problems)
{
    private static readonly string[] Members =
        ["id", "name", "plain", "system", "places", "prior", "ageing", "consequence", "deficiency", "source"];

    /// <summary>Binds all entries.</summary>
    public void BindAll(IReadOnlyList<Entry> entries)
    {
        foreach (var (id, node) in entries)
            tables.Faults.Bind(id, Fault(id, new EntryReader(node, "fault", Members, problems)));
    }

    private Fault? Fault(string id, EntryReader reader)
    {
        var name = reader.TextPair("name");
        var system = reader.Id("system", tables.Systems);
        var places = reader.Ids("places", tables.Positions);
        var prior = reader.Number("prior", 0.00001, 0.5);
        var ageing = reader.Id("ageing", tables.Ageings);
        var consequence = reader.Id("consequence", tables.Consequences);
        var deficiency = reader.OneOf<Deficiency>("deficiency", FormatWords.Deficiency);
        var source = sources.Required(reader);
        return tables.Ageings.TryGet(ageing, out var ages) && tables.Consequences.TryGet(consequence, out var harm) && source is not null
            ? new Fault(id, name, system, places, prior, ages, harm, deficiency, source)
            : null;
    }
}
