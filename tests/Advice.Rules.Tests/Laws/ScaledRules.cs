using System.Globalization;
using System.Text.RegularExpressions;
using Advice.Rules.RuleSets;

namespace Advice.Rules.Tests.Laws;

/// <summary>The repository's rules with other base rates.</summary>
internal static partial class ScaledRules
{
    /// <summary>All priors a tenth of what they are, but never below the smallest that the format takes.</summary>
    public static RuleBook DividedByTen()
    {
        var folder = Directory.CreateTempSubdirectory("rules-");
        try
        {
            foreach (var file in Directory.EnumerateFiles(RepositoryRules.Directory, "*.yaml", SearchOption.AllDirectories))
            {
                var copy = Path.Combine(folder.FullName, Path.GetRelativePath(RepositoryRules.Directory, file));
                Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
                File.WriteAllText(copy, Prior().Replace(File.ReadAllText(file), match =>
                    $"prior: {Math.Max(1e-5, double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) / 10).ToString("F8", CultureInfo.InvariantCulture)}"));
            }

            return RuleSetLoader.Load(folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [GeneratedRegex(@"\bprior: ([0-9.e-]+)")]
    private static partial Regex Prior();
}
