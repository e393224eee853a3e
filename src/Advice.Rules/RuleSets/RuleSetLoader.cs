using System.Collections.Frozen;
using Advice.Evidence;
using Advice.Knowledge;
using Advice.Rules.Checking;
using Advice.Rules.Files;
using Advice.Rules.Overlays;

namespace Advice.Rules.RuleSets;

/// <summary>Reads, checks and hashes a folder of rule files, and the overlays over it.</summary>
public static class RuleSetLoader
{
    /// <summary>The rule set of a folder.</summary>
    /// <exception cref="RuleSetException">Something is wrong with it; every error is named.</exception>
    public static RuleBook Load(string directory) => Load(directory, []);

    /// <summary>The rule set of a folder with overlays over it, in order.</summary>
    /// <exception cref="RuleSetException">Something is wrong with it; every error is named.</exception>
    public static RuleBook Load(string directory, IReadOnlyList<string> overlays) => Read(directory, overlays, new Tables(), places: overlays.Count > 0);

    /// <summary>The rule set of a folder with what its author should look at again.</summary>
    /// <exception cref="RuleSetException">Something is wrong with it; every error is named.</exception>
    public static ReviewedRules Review(string directory) => Review(directory, []);

    /// <summary>The same with overlays over it, in order.</summary>
    /// <exception cref="RuleSetException">Something is wrong with it; every error is named.</exception>
    public static ReviewedRules Review(string directory, IReadOnlyList<string> overlays)
    {
        var tables = new Tables();
        var book = Read(directory, overlays, tables, places: true);
        return new ReviewedRules(book, () => [.. book.Warnings, .. Checking.Doubts.Review.Of(tables)]);
    }

    /// <summary>Hash of the files of a folder.</summary>
    internal static string RevisionOf(string directory) => Revision.Of(Files(directory, new Problems()));

    /// <summary>The files of a folder without errors, parsed, and what they say.</summary>
    internal static (IReadOnlyList<RuleFile> Files, IReadOnlyList<MappingNode> Nodes, Catalogue Catalogue) Parse(string directory)
    {
        var problems = new Problems();
        var files = Files(directory, problems);
        var nodes = ParsedFiles.Of(files, problems);
        return (files, nodes, Bound(nodes, new Tables(), problems));
    }

    private static RuleBook Read(string directory, IReadOnlyList<string> overlays, Tables tables, bool places)
    {
        var problems = new Problems();
        var files = Files(directory, problems);
        var revision = Revision.Of(files);
        var sound = Snapshot.Read(directory, revision, places);
        var nodes = sound?.Files ?? ParsedFiles.Of(files, problems);
        if (overlays.Count > 0)
            return Laid(files, nodes, overlays, tables, problems);
        problems.AreRuledOut = sound is not null;
        return new RuleBook(Bound(nodes, tables, problems) with { Learned = sound?.Learned ?? default }, revision, []);
    }

    private static List<RuleFile> Files(string directory, Problems problems)
    {
        var files = RuleFolder.Read(directory, problems).Where(file => !file.HoldsCases).ToList();
        if (files.Count == 0 && problems.None)
            problems.Add(ErrorCode.FileNotRead, new Place(directory, 1, 1), "there are no rule files in this folder");
        return [.. files, .. BaseFiles.All];
    }

    private static RuleBook Laid(
        IReadOnlyList<RuleFile> files, IReadOnlyList<MappingNode> nodes, IReadOnlyList<string> overlays, Tables tables, Problems problems)
    {
        // The shipped set must be right by itself: an overlay does not mend it, and its errors would look like those of the overlay.
        var shipped = Bound(nodes, new Tables(), problems);
        var layers = new Layers(nodes, tables.ByKind, problems);
        var read = overlays.Select(overlay => OverlayFolder.Read(overlay, tables.ByKind, problems)).OfType<OverlayFolder>().ToList();
        foreach (var twin in read.GroupBy(overlay => overlay.Manifest.Name).SelectMany(group => group.Skip(1)))
            problems.Add(ErrorCode.IdTaken, twin.Manifest.Place, $"another overlay is named '{twin.Manifest.Name}' already");
        var below = new List<(OverlayManifest Manifest, IReadOnlyList<MappingNode> Files)>();
        foreach (var overlay in read)
        {
            below.Add((overlay.Manifest, layers.Files));
            layers.Add(overlay);
        }

        layers.CheckDependants(read.SelectMany(overlay => overlay.Manifest.Off));
        if (!problems.None)
            throw new RuleSetException(problems.InOrder);
        var catalogue = Bound(layers.Files, tables, problems) with
        {
            Overlays = [.. read.Select(overlay => new Overlay(overlay.Manifest.Name, overlay.Manifest.Title, Revision.Of(overlay.Content)))],
            OverlayEntries = layers.Entries.ToFrozenDictionary(),
        };
        return new RuleBook(
            catalogue, Revision.Of(files, [.. catalogue.Overlays.Select(overlay => overlay.Revision)]),
            ProtectionLost.Of(shipped, tables, [.. read.Select(overlay => overlay.Manifest)]))
        {
            SwitchedOff =
            [
                .. below.Where(one => one.Manifest.Off.Count > 0)
                    .Select(one => new SwitchedOff(layers.SwitchedOff(one.Manifest), new RuleBook(Below(one.Files, nodes, shipped), Revision.Of(files), []))),
            ],
        };
    }

    /// <summary>What lies below an overlay. Overlays are checked together, so that those below may not stand by themselves; then it is the shipped set.</summary>
    private static Catalogue Below(IReadOnlyList<MappingNode> files, IReadOnlyList<MappingNode> nodes, Catalogue shipped)
    {
        if (ReferenceEquals(files, nodes))
            return shipped;
        var problems = new Problems();
        return RuleSetBinder.Bind(files, new Tables(), problems) is { } bound && problems.None ? bound : shipped;
    }

    /// <summary>The catalogue. Where a file could not be read, that others miss what it holds is no error of theirs.</summary>
    private static Catalogue Bound(IReadOnlyList<MappingNode> nodes, Tables tables, Problems problems)
    {
        var isWhole = problems.None;
        var catalogue = RuleSetBinder.Bind(nodes, tables, problems);
        return catalogue is null || !problems.None
            ? throw new RuleSetException([.. problems.InOrder.Where(error => isWhole || !ErrorCode.OfWhatIsMissed.Contains(error.Code))])
            : catalogue;
    }
}
