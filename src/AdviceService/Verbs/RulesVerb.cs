using System.CommandLine;
using Advice.Rules.Cases;

namespace AdviceService.Verbs;

/// <summary>The verb "rules": what a rule author needs.</summary>
internal static class RulesVerb
{
    public static Command Command(Option<string> rules)
    {
        var check = new Command("check", "Check all rule files: every error, and what to look at again");
        check.SetAction(parsed => Check(parsed.GetValue(rules)!));
        var test = new Command("test", "Ask the rules what their cases ask and compare");
        test.SetAction(parsed => Test(parsed.GetValue(rules)!));
        return new Command("rules", "Work on the rule files")
        {
            check, test, ExplainVerb.Command(rules), WhyVerb.Command(rules), CoverVerb.Command(rules),
            GraphVerb.Command(rules), DiffVerb.Command(),
        };
    }

    private static int Check(string folder)
    {
        if (RuleFolder.Review(folder) is not { } reviewed)
            return 1;
        foreach (var warning in reviewed.Warnings)
            Console.WriteLine($"{warning} [warning]");
        var catalogue = reviewed.Book.Catalogue;
        Console.WriteLine(
            $"{catalogue.Rules.Count} rules, {catalogue.Symptoms.Count} symptoms, {catalogue.Faults.Count} faults, {catalogue.Checks.Count} checks, {catalogue.Cautions.Count} cautions: no error, {reviewed.Warnings.Count} warnings.");
        return 0;
    }

    private static int Test(string folder)
    {
        if (RuleFolder.Load(folder) is not { } book)
            return 1;
        var cases = CaseFiles.Read(folder, book);
        var runner = new CaseRunner(book);
        var failed = cases.Cases.Select(runner.Run).Where(result => !result.Passed).ToList();
        foreach (var result in failed)
            Console.WriteLine(result);
        Console.WriteLine($"{cases.Cases.Count} cases, {failed.Count} fail, {cases.Errors.Count} errors in case files.");
        return failed.Count == 0 && cases.Errors.Count == 0 ? 0 : 1;
    }
}
