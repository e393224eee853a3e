using Advice.Rules.RuleSets;

namespace AdviceService.Verbs;

/// <summary>Loads the rule files that a verb works with.</summary>
internal static class RuleFolder
{
    /// <summary>The rule set, or null after every error was printed. What overlays take away that protects people is printed in any case.</summary>
    public static RuleBook? Load(RuleFolders folders)
    {
        var book = OrErrors(RuleSetLoader.Load, folders);
        foreach (var warning in book?.Warnings ?? [])
            Console.Error.WriteLine(warning);
        return book;
    }

    /// <summary>The rule set with its warnings, or null after every error was printed.</summary>
    public static ReviewedRules? Review(RuleFolders folders) => OrErrors(RuleSetLoader.Review, folders);

    /// <summary>Writes the snapshot of the rules; 1 after every error was printed.</summary>
    public static int Snapshot(RuleFolders folders) => OrErrors(
        (rules, _) =>
        {
            Advice.Rules.RuleSets.Snapshot.Write(rules);
            return rules;
        },
        folders) is null ? 1 : 0;

    private static T? OrErrors<T>(Func<string, IReadOnlyList<string>, T> load, RuleFolders folders)
        where T : class
    {
        try
        {
            return load(folders.Rules, folders.Overlays);
        }
        catch (RuleSetException broken)
        {
            foreach (var error in broken.Errors)
                Console.Error.WriteLine(error);
            Console.Error.WriteLine($"{broken.Errors.Count} errors in the rule files; docs/errors has a page for each kind. Nothing was started.");
            return null;
        }
    }
}
