using Advice.Rules.Checking;
using Advice.Rules.RuleSets;

namespace AdviceService.Verbs;

/// <summary>Loads the rule files that a verb works with.</summary>
internal static class RuleFolder
{
    /// <summary>The rule set, or null after every error was printed. What overlays take away that protects people is printed in any case.</summary>
    public static RuleBook? Load(RuleFolders folders)
    {
        var book = OrErrors(RuleSetLoader.Load, folders);
        Messages.Print(Console.Error, book?.Warnings ?? [], folders.Rules);
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
            Messages.Print(Console.Error, broken.Errors, folders.Rules);
            if (broken.Errors.Any(error => error.Code is ErrorCode.FileNotRead or ErrorCode.MalformedYaml or ErrorCode.NotPlainData))
                Console.Error.WriteLine("Some file could not be read; what others name of it is checked once it can.");
            Console.Error.WriteLine($"{broken.Errors.Count} errors in the rule files; each kind has a page, docs/errors/KIND.md. Nothing was started.");
            return null;
        }
    }
}
