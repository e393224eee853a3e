namespace AdviceService.Tests.Verbs;

/// <summary>A copy of the shipped rules with few of their cases, for tests that change rules or ask every case.</summary>
internal static class RulesCopy
{
    public static readonly string Shipped = Path.Combine(Repository.Root, "rules");

    /// <summary>Copies them.</summary>
    /// <param name="to">The folder to fill.</param>
    /// <param name="keepsCases">Which case files, by path; the others are left out.</param>
    /// <param name="keepsLine">Which lines of rule files; null = all.</param>
    public static async Task FillAsync(string to, Func<string, bool> keepsCases, Func<string, bool>? keepsLine = null)
    {
        foreach (var file in Directory.EnumerateFiles(Shipped, "*.yaml", SearchOption.AllDirectories))
        {
            var name = Path.GetRelativePath(Shipped, file);
            if (name.EndsWith(".cases.yaml", StringComparison.Ordinal) && !keepsCases(name))
                continue;
            var copy = Path.Combine(to, name);
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            await File.WriteAllLinesAsync(copy, (await File.ReadAllLinesAsync(file)).Where(line => keepsLine?.Invoke(line) != false));
        }
    }
}
