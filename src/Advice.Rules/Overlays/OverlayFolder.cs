using Advice.Rules.Checking;
using Advice.Rules.Files;

namespace Advice.Rules.Overlays;

/// <summary>An overlay as it was read.</summary>
/// <param name="Manifest">What it says about itself.</param>
/// <param name="Roots">Its parsed rule files.</param>
/// <param name="Content">The files that its revision covers, with paths inside the folder.</param>
internal sealed record OverlayFolder(OverlayManifest Manifest, IReadOnlyList<MappingNode> Roots, IReadOnlyList<RuleFile> Content)
{
    /// <summary>What stands before the paths of an overlay's files in messages, so that they lead to the file.</summary>
    public static string Prefix(string directory) => $"{directory.Replace(Path.DirectorySeparatorChar, '/').TrimEnd('/')}/";

    /// <summary>Reads it; null where it has no manifest that can be read.</summary>
    public static OverlayFolder? Read(string directory, IReadOnlyDictionary<string, IDeclaredIds> kinds, Problems problems)
    {
        var prefix = Prefix(directory);
        var before = problems.Count;
        var files = RuleFolder.Read(directory, problems, prefix).Where(file => !file.HoldsCases).ToList();
        var manifest = files.Find(file => file.Path == prefix + OverlayManifest.File);
        if (manifest is null)
        {
            if (problems.Count == before)
                problems.Add(ErrorCode.FileNotRead, new Place(prefix + OverlayManifest.File, 1, 1), "an overlay needs this file with its 'name' and 'title'");
            return null;
        }

        var root = YamlReader.Read(manifest, problems);
        var roots = ParsedFiles.Of([.. files.Where(file => file != manifest)], problems);
        return root is null ? null : new OverlayFolder(
            OverlayManifest.Read(root, kinds, problems), roots, [.. files.Select(file => file with { Path = file.Path[prefix.Length..] })]);
    }
}
