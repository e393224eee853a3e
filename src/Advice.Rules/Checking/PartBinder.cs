using Advice.Knowledge;

namespace Advice.Rules.Checking;

/// <summary>Binds the parts that faults call for.</summary>
internal sealed class PartBinder(Tables tables, Problems problems)
{
    private static readonly string[] Members = ["id", "name", "plain", "faults"];

    /// <summary>Binds all entries.</summary>
    public void BindAll(IReadOnlyList<Entry> entries)
    {
        foreach (var (id, node) in entries)
        {
            var reader = new EntryReader(node, "part", Members, problems);
            if (!reader.Has("faults"))
                reader.Refuse(ErrorCode.MissingMember, "faults", "'faults' is missing; a part is ordered for at least one");
            tables.Parts.Bind(id, new Part(id, reader.TextPair("name"), reader.Ids("faults", tables.Faults)));
        }
    }
}
