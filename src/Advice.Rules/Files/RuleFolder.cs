using Advice.Rules.Checking;

namespace Advice.Rules.Files;

/// <summary>A folder of rule files on disk.</summary>
internal static class RuleFolder
{
    /// <summary>All rule and case files below a folder, by path.</summary>
    public static IReadOnlyList<RuleFile> Read(string directory, Problems problems)
    {
        var files = new List<RuleFile>();
        if (!Directory.Exists(directory))
        {
            problems.Add(ErrorCode.FileNotRead, new Place(directory, 1, 1), "there is no such folder of rules");
            return files;
        }

        foreach (var path in Directory.EnumerateFiles(directory, "*", SearchOption.AllDirectories))
        {
            var name = Path.GetRelativePath(directory, path).Replace(Path.DirectorySeparatorChar, '/');
            // A file that is silently left out could hold a caution.
            if (!name.EndsWith(".yaml", StringComparison.Ordinal))
            {
                if (Path.GetExtension(name).ToUpperInvariant() is ".YML" or ".YAML")
                    problems.Add(ErrorCode.FileNotRead, new Place(name, 1, 1), "rule files end in .yaml, so this file would not be read");
                continue;
            }

            try
            {
                files.Add(new RuleFile(name, File.ReadAllBytes(path)));
            }
            catch (Exception error) when (error is IOException or UnauthorizedAccessException)
            {
                problems.Add(ErrorCode.FileNotRead, new Place(name, 1, 1), $"the file cannot be read: {error.Message}");
            }
        }

        files.Sort((a, b) => string.CompareOrdinal(a.Path, b.Path));
        return files;
    }
}
