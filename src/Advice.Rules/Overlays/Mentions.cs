using Advice.Rules.Files;

namespace Advice.Rules.Overlays;

/// <summary>Which entries name another one.</summary>
internal static class Mentions
{
    private static readonly Dictionary<string, string[]> Kinds = new()
    {
        ["system"] = ["systems"],
        ["area"] = ["areas"],
        ["fault"] = ["faults"],
        ["faults"] = ["faults"],
        ["check"] = ["checks"],
        ["checks"] = ["checks"],
        ["caution"] = ["cautions"],
        ["cautions"] = ["cautions"],
        ["needs"] = ["set-ups"],
        ["includes"] = ["set-ups"],
        ["symptom"] = ["symptoms"],
        ["symptoms"] = ["symptoms"],
        ["without"] = ["symptoms"],
        ["implies"] = ["symptoms", "codes"],
        ["code"] = ["codes"],
        ["occasions"] = ["occasions"],
        ["within"] = ["occasions", "jurisdictions"],
        ["places"] = ["positions"],
        ["position"] = ["positions"],
        ["parts"] = ["positions"],
        ["jurisdiction"] = ["jurisdictions"],
        ["ageing"] = ["ageing"],
        ["consequence"] = ["consequences"],
        ["source"] = ["sources"],
        ["item"] = ["services"],
        ["services"] = ["services"],
        ["vehicle"] = ["facts"],
    };

    /// <summary>The entries that name an entry of a kind.</summary>
    public static IEnumerable<(string Kind, ScalarNode Id)> Of(string kind, string id, IEnumerable<MappingNode> files) =>
        from file in files
        from list in file.Members
        from entry in (list.Value as ListNode)?.Items ?? []
        where entry is MappingNode mapping && mapping.Members.Any(member => Names(member.Value, member.Key.Value, kind, id))
        let own = (entry as MappingNode)?["id"] as ScalarNode
        where own is not null && !(list.Key.Value == kind && own.Value == id)
        select (list.Key.Value, own);

    private static bool Names(Node node, string member, string kind, string id) => node switch
    {
        ScalarNode word => word.Value == id && Kinds.TryGetValue(member, out var kinds) && kinds.Contains(kind),
        ListNode list => list.Items.Any(item => Names(item, member, kind, id)),
        MappingNode mapping => mapping.Members.Any(one =>
            (member == "vehicle" && kind == "facts" && one.Key.Value == id) || Names(one.Value, one.Key.Value, kind, id)),
        _ => false,
    };
}
