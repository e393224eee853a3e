using System.CommandLine;
using Advice.Rules.Cases;
using Advice.Rules.RuleSets;

namespace AdviceService.Verbs;

/// <summary>The verb "rules": what a rule author needs.</summary>
internal static class RulesVerb
{
    public static Command Command(Option<string> rules)
    {
        var check = new Command("check", "Check all rule files and name every error");
        check.SetAction(parsed => Guarded(() => Check(parsed.GetValue(rules)!)));
        var test = new Command("test", "Ask the rules what their cases ask and compare");
        test.SetAction(parsed => Guarded(() => Test(parsed.GetValue(rules)!)));
        return new Command("rules", "Work on the rule files") { check, test };
    }

    private static int Check(string folder)
    {
        var catalogue = RuleSetLoader.Load(folder).Catalogue;
        Console.WriteLine(
            $"{catalogue.Rules.Count} rules, {catalogue.Symptoms.Count} symptoms, {catalogue.Faults.Count} faults, {catalogue.Checks.Count} checks, {catalogue.Cautions.Count} cautions: no error.");
        return 0;
    }

    private static int Test(string folder)
    {
        var book = RuleSetLoader.Load(folder);
        var cases = CaseFolder.Read(folder, book.Catalogue, PlainRequest.Read);
        foreach (var error in cases.Errors)
            Console.Error.WriteLine(error);
        var runner = new CaseRunner(book);
        var failed = cases.Cases.Select(runner.Run).Where(result => !result.Passed).ToList();
        foreach (var result in failed)
            Console.WriteLine(result);
        Console.WriteLine($"{cases.Cases.Count} cases, {failed.Count} fail, {cases.Errors.Count} errors in case files.");
        return failed.Count == 0 && cases.Errors.Count == 0 ? 0 : 1;
    }

    private static int Guarded(Func<int> action)
    {
        try
        {
            return action();
        }
        catch (RuleSetException broken)
        {
            foreach (var error in broken.Errors)
                Console.Error.WriteLine(error);
            return 1;
        }
    }
}
