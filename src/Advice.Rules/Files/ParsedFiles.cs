using System.Collections.Concurrent;
using Advice.Rules.Checking;

namespace Advice.Rules.Files;

/// <summary>Parses many files at once: reading YAML is most of the time that a rule set takes to load.</summary>
internal static class ParsedFiles
{
    /// <summary>The mappings of those files that could be parsed, in the order of the files.</summary>
    public static IReadOnlyList<MappingNode> Of(IReadOnlyList<RuleFile> files, Problems problems)
    {
        var (roots, own) = (new MappingNode?[files.Count], new Problems[files.Count]);
        // One by one: files are of very different size, and no core should wait for the part of another.
        Parallel.ForEach(Partitioner.Create(Enumerable.Range(0, files.Count), EnumerablePartitionerOptions.NoBuffering), i =>
        {
            own[i] = new Problems();
            roots[i] = YamlReader.Read(files[i], own[i]);
        });
        foreach (var one in own)
            problems.Add(one);
        return [.. roots.OfType<MappingNode>()];
    }
}
