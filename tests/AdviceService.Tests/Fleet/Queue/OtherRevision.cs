namespace AdviceService.Tests.Fleet.Queue;

/// <summary>A copy of the rules that says the same under another revision.</summary>
internal sealed class OtherRevision : IDisposable
{
    private readonly DirectoryInfo _copy = Directory.CreateTempSubdirectory("rules-");

    public OtherRevision()
    {
        var rules = Path.Combine(AppContext.BaseDirectory, "rules");
        foreach (var file in Directory.EnumerateFiles(rules, "*.yaml", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(Folder, Path.GetRelativePath(rules, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        // Cases are no part of the revision.
        File.AppendAllText(Directory.EnumerateFiles(Folder, "*.yaml", SearchOption.AllDirectories).First(file => !file.EndsWith(".cases.yaml", StringComparison.Ordinal)), "\n# another revision\n");
    }

    public string Folder => _copy.FullName;

    public void Dispose() => _copy.Delete(recursive: true);
}
