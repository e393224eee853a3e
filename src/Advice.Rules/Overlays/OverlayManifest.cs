using System.Text.RegularExpressions;
using Advice.Rules.Checking;
using Advice.Rules.Files;

namespace Advice.Rules.Overlays;

/// <summary>What an overlay says about itself: its name, and what it replaces and switches off below it.</summary>
internal sealed partial record OverlayManifest(string Name, string Title, Place Place, IReadOnlyList<OverlayMark> Replaces, IReadOnlyList<OverlayMark> Off)
{
    /// <summary>Name of the file.</summary>
    public const string File = "overlay.yaml";

    /// <summary>Reads it.</summary>
    /// <param name="root">The file.</param>
    /// <param name="kinds">The kinds of entry.</param>
    /// <param name="problems">Where to note errors.</param>
    public static OverlayManifest Read(MappingNode root, IReadOnlyDictionary<string, IDeclaredIds> kinds, Problems problems)
    {
        var reader = new EntryReader(root, "overlay", ["name", "title", "replaces", "off"], problems);
        var name = reader.Text("name");
        if (name.Length > 0 && !Words().IsMatch(name))
            reader.Refuse(ErrorCode.MalformedId, "name", $"the name '{name}' must be lower-case words joined by hyphens");
        return new OverlayManifest(name, reader.Text("title"), reader.At("name"), Marks("replaces"), Marks("off"));

        IReadOnlyList<OverlayMark> Marks(string member)
        {
            var node = reader.Raw(member);
            if (node is not null and not ListNode)
                reader.Refuse(ErrorCode.WrongShape, member, $"'{member}' must be a list, not {node.Shape}");
            return [.. ((node as ListNode)?.Items ?? []).Select(item => Mark(item, member)).OfType<OverlayMark>()];
        }

        OverlayMark? Mark(Node item, string member)
        {
            if (item is not MappingNode mapping)
            {
                problems.Add(ErrorCode.WrongShape, item.Place, $"what stands under '{member}' must be a mapping with 'kind' and 'id', not {item.Shape}");
                return null;
            }

            var mark = new EntryReader(mapping, $"mark under '{member}'", ["kind", "id", "because"], problems);
            var (kind, id) = (mark.Text("kind"), mark.Text("id"));
            var because = member == "off" ? mark.Text("because") : mark.TextOrNull("because");
            if (kind.Length > 0 && !kinds.ContainsKey(kind))
                problems.AddNoValue(mark.At("kind"), kind, "kind", kinds.Keys);
            return kinds.ContainsKey(kind) && id.Length > 0 ? new OverlayMark(kind, id, because, mark.At("id")) : null;
        }
    }

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*\\z")]
    private static partial Regex Words();
}
