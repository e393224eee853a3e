using Advice.Knowledge;
using Advice.Knowledge.Words;
using Advice.Rules.Checking;
using Advice.Rules.Files;

namespace Advice.Rules.Overlays;

/// <summary>The shipped files with overlays laid over them, one after the other, before anything is bound.</summary>
/// <param name="shipped">The shipped files.</param>
/// <param name="kinds">The kinds of entry.</param>
/// <param name="problems">Where to note errors.</param>
internal sealed class Layers(IReadOnlyList<MappingNode> shipped, IReadOnlyDictionary<string, IDeclaredIds> kinds, Problems problems)
{
    private const int MostNamed = 5;

    private readonly Dictionary<(string Kind, string Id), OverlayEntry> entries = [];

    /// <summary>The files as they are by now.</summary>
    public IReadOnlyList<MappingNode> Files { get; private set; } = shipped;

    /// <summary>What came from overlays, by kind and id.</summary>
    public IReadOnlyDictionary<(string Kind, string Id), OverlayEntry> Entries => entries;

    /// <summary>Lays one over what is there.</summary>
    public void Add(OverlayFolder overlay)
    {
        var (below, own) = (Ids(Files), Ids(overlay.Roots));
        var manifest = overlay.Manifest;
        foreach (var mark in manifest.Replaces.Concat(manifest.Off).Where(mark => !below.Contains((mark.Kind, mark.Id))))
        {
            var near = NearestWord.To(mark.Id, below.Where(one => one.Kind == mark.Kind).Select(one => one.Id));
            problems.Add(ErrorCode.UnknownId, mark.Place, $"below this overlay there is no {Noun(mark)} '{mark.Id}' under '{mark.Kind}'", near);
        }

        foreach (var mark in manifest.Replaces.Where(mark => below.Contains((mark.Kind, mark.Id)) && !own.Contains((mark.Kind, mark.Id))))
            problems.Add(ErrorCode.MissingMember, mark.Place, $"this overlay has no {Noun(mark)} '{mark.Id}' to put in the place of the one below; to take it away name it under 'off'");
        foreach (var mark in manifest.Off.Where(mark => own.Contains((mark.Kind, mark.Id))))
            problems.Add(ErrorCode.Contradiction, mark.Place, $"the {Noun(mark)} '{mark.Id}' is switched off and written anew; name it under 'replaces' instead");
        foreach (var twice in manifest.Replaces.Concat(manifest.Off).GroupBy(mark => (mark.Kind, mark.Id)).Where(group => group.Skip(1).Any()))
            problems.Add(ErrorCode.RepeatedWord, twice.Last().Place, $"the {Noun(twice.Last())} '{twice.Key.Id}' is named twice in this overlay");

        var gone = manifest.Replaces.Concat(manifest.Off).Select(mark => (mark.Kind, mark.Id)).ToHashSet();
        Files = [.. Files.Select(file => Without(file, gone)), .. overlay.Roots];
        foreach (var (kind, id) in gone)
            entries.Remove((kinds[kind].Noun, id));
        foreach (var (kind, id) in own.Where(one => kinds.ContainsKey(one.Kind)))
            entries[(kinds[kind].Noun, id)] = new OverlayEntry(manifest.Name, kinds[kind].Noun, id);
    }

    /// <summary>What an overlay switches off.</summary>
    public IReadOnlyList<OverlayEntry> SwitchedOff(OverlayManifest manifest) =>
        [.. manifest.Off.Select(mark => new OverlayEntry(manifest.Name, Noun(mark), mark.Id, mark.Because))];

    /// <summary>Refuses to switch off what others still name, once all overlays are laid.</summary>
    public void CheckDependants(IEnumerable<OverlayMark> off)
    {
        var ids = Ids(Files);
        foreach (var mark in off.Where(mark => !ids.Contains((mark.Kind, mark.Id))))
        {
            var named = Mentions.Of(mark.Kind, mark.Id, Files).ToList();
            if (mark.Kind == "wordings")
                problems.Add(ErrorCode.StillNeeded, mark.Place, $"the {Noun(mark)} '{mark.Id}' cannot be switched off: answers need words for it; replace it instead");
            if (named.Count == 0)
                continue;
            var some = string.Join(", ", named.Take(MostNamed).Select(one => $"{one.Kind} '{one.Id.Value}' ({one.Id.Place.File} line {one.Id.Place.Line})"));
            var more = named.Count > MostNamed ? $" and {named.Count - MostNamed} more" : "";
            problems.Add(ErrorCode.StillNeeded, mark.Place, $"the {Noun(mark)} '{mark.Id}' cannot be switched off while others name it: {some}{more}; switch them off or replace them too");
        }
    }

    private string Noun(OverlayMark mark) => kinds[mark.Kind].Noun;

    private static HashSet<(string Kind, string Id)> Ids(IEnumerable<MappingNode> files) =>
    [
        .. from file in files
           from list in file.Members
           from entry in (list.Value as ListNode)?.Items ?? []
           let id = ((entry as MappingNode)?["id"] as ScalarNode)?.Value
           where id is not null
           select (list.Key.Value, id),
    ];

    private static MappingNode Without(MappingNode file, HashSet<(string Kind, string Id)> gone) => file with
    {
        Members = [.. file.Members.Select(list => (list.Key, list.Value is ListNode entries ? Without(list.Key.Value, entries, gone) : list.Value))],
    };

    private static ListNode Without(string kind, ListNode list, HashSet<(string Kind, string Id)> gone) => list with
    {
        Items = [.. list.Items.Where(entry => entry is not MappingNode mapping || mapping["id"] is not ScalarNode id || !gone.Contains((kind, id.Value)))],
    };
}
