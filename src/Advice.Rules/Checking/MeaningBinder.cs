using Advice.Knowledge;

namespace Advice.Rules.Checking;

/// <summary>Binds what verdicts of workshop arithmetic mean.</summary>
internal sealed class MeaningBinder(Tables tables, SourceBinder sources, Problems problems)
{
    private static readonly string[] Members = ["id", "computation", "verdicts", "text", "plain", "checks", "source"];

    /// <summary>Binds all entries.</summary>
    public void BindAll(IReadOnlyList<Entry> entries)
    {
        foreach (var (id, node) in entries)
            tables.Meanings.Bind(id, Meaning(id, new EntryReader(node, "meaning", Members, problems)));
    }

    private Meaning? Meaning(string id, EntryReader reader)
    {
        var computation = reader.Computation();
        var verdicts = reader.Texts("verdicts");
        if (!reader.Has("verdicts"))
            reader.Refuse(ErrorCode.MissingMember, "verdicts", "'verdicts' is missing: of which verdicts is this the meaning?");
        foreach (var verdict in verdicts.Where(verdict => computation?.Verdicts.Contains(verdict) == false))
            problems.AddNoValue(reader.At("verdicts"), verdict, "verdicts", computation!.Verdicts);
        var (text, checks) = (reader.TextPair("text"), reader.Ids("checks", tables.Checks, emptyIsFine: true));
        return sources.Required(reader) is { } source && computation is not null ? new Meaning(id, computation.Name, verdicts, text, checks, source) : null;
    }
}
