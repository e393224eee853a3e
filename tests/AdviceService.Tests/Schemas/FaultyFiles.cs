namespace AdviceService.Tests.Schemas;

/// <summary>The faulty rule files by which the loader's messages are tested, save those that are about YAML itself.</summary>
internal static class FaultyFiles
{
    private const string Name = "### ";
    private const string Says = ">>> ";
    private static readonly string Folder = Path.Combine(Repository.Root, "tests", "Advice.Rules.Tests", "Broken");

    /// <summary>Their texts by name.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } =
        new[] { "faults-and-checks", "rules", "vocabulary" }.SelectMany(Read).ToDictionary(one => one.Name, one => one.Text);

    private static IEnumerable<(string Name, string Text)> Read(string topic)
    {
        var examples = File.ReadAllText(Path.Combine(Folder, $"{topic}.txt")).Split(Name, StringSplitOptions.RemoveEmptyEntries);
        foreach (var example in examples)
        {
            var lines = example.Split('\n');
            yield return ($"{topic}: {lines[0]}", string.Join('\n', lines[1..].Where(line => !line.StartsWith(Says, StringComparison.Ordinal))));
        }
    }
}
