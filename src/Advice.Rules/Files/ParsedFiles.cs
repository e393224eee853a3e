using Advice.Rules.Checking;

namespace Advice.Rules.Files;

/// <summary>Parses many files at once: reading YAML is most of the time that a rule set takes to load.</summary>
internal static class ParsedFiles
{
    /// <summary>The mappings of those files that could be parsed, in the order of the files.</summary>
    public static IReadOnlyList<MappingNode> Of(IReadOnlyCollection<RuleFile> files, Problems problems)
    {
        var parsed = files.AsParallel().AsOrdered().Select(file =>
        {
            var own = new Problems();
            return (Root: YamlReader.Read(file, own), Problems: own);
        }).ToList();
        foreach (var one in parsed)
            problems.Add(one.Problems);
        return [.. parsed.Select(one => one.Root).OfType<MappingNode>()];
    }
}
