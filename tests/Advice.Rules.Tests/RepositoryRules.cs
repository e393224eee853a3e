using Advice.Rules.RuleSets;

namespace Advice.Rules.Tests;

/// <summary>The rule folder of this repository.</summary>
internal static class RepositoryRules
{
    public static string Directory { get; } = Find();

    /// <summary>Its rules, read once for all tests.</summary>
    public static RuleBook Book => Loaded.Value;

    private static readonly Lazy<RuleBook> Loaded = new(() => RuleSetLoader.Load(Find()));

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "AdviceService.sln")))
                return Path.Combine(folder.FullName, "rules");
        }

        throw new DirectoryNotFoundException("No folder above the tests holds AdviceService.sln.");
    }
}
