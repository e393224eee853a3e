using Advice.Rules.RuleSets;

namespace AdviceService.Verbs;

/// <summary>Loads the rule files that a verb works with.</summary>
internal static class RuleFolder
{
    /// <summary>The rule set, or null after every error was printed.</summary>
    public static RuleBook? Load(string folder) => OrErrors(RuleSetLoader.Load, folder);

    /// <summary>The rule set with its warnings, or null after every error was printed.</summary>
    public static ReviewedRules? Review(string folder) => OrErrors(RuleSetLoader.Review, folder);

    private static T? OrErrors<T>(Func<string, T> load, string folder)
        where T : class
    {
        try
        {
            return load(folder);
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
