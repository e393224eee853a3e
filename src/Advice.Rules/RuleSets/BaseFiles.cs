using Advice.Rules.Files;

namespace Advice.Rules.RuleSets;

/// <summary>Rule files that belong to the program and not to what is known of vehicles: every rule set stands on them.</summary>
internal static class BaseFiles
{
    /// <summary>The files, by name.</summary>
    public static IReadOnlyList<RuleFile> All { get; } =
    [
        .. typeof(BaseFiles).Assembly.GetManifestResourceNames().Where(name => name.EndsWith(".yaml", StringComparison.Ordinal)).Order(StringComparer.Ordinal)
            .Select(name => new RuleFile($"base/{name}", Content(name))),
    ];

    private static byte[] Content(string name)
    {
        using var file = typeof(BaseFiles).Assembly.GetManifestResourceStream(name)!;
        var content = new byte[file.Length];
        file.ReadExactly(content);
        return content;
    }
}
