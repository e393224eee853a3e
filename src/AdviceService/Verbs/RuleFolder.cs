using Advice.Rules.RuleSets;

namespace AdviceService.Verbs;

/// <summary>Loads the rule files that a verb works with.</summary>
internal static class RuleFolder
{
    /// <summary>The rule set, or null after every error was printed.</summary>
    public static RuleBook? Load(string folder)
    {
        try
        {
            return RuleSetLoader.Load(folder);
        }
        catch (RuleSetException broken)
        {
            foreach (var error in broken.Errors)
                Console.Error.WriteLine(error);
            Console.Error.WriteLine($"{broken.Errors.Count} errors in the rule files; nothing was started.");
            return null;
        }
    }
}
