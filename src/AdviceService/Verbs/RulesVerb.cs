using System.CommandLine;
using Advice.Rules.Cases;
using Advice.Rules.Checking;

namespace AdviceService.Verbs;

/// <summary>The verb "rules": what a rule author needs.</summary>
internal static class RulesVerb
{
    public static Command Command(RuleOptions rules)
    {
        var check = new Command("check", "Check all rule files: every error, and what to look at again");
        check.SetAction(parsed => Check(rules.ForAuthor(parsed)));
        var test = new Command("test", "Ask the rules what their cases ask and compare, and read every phrase of a symptom");
        test.SetAction(parsed => Test(rules.ForAuthor(parsed)));
        return new Command("rules", "Work on the rule files")
        {
            check, test, ExplainVerb.Command(rules), WhyVerb.Command(rules), CoverVerb.Command(rules),
            GraphVerb.Command(rules), FormatVerb.Command(rules), DiffVerb.Command(rules), BenchVerb.Command(rules), InspectionShareVerb.Command(rules),
            QuestionsVerb.Command(rules), ReadingLevelVerb.Command(rules), SnapshotVerb.Command(rules),
        };
    }

    /// <summary>Case files are parsed while rules are, and bound while these are reviewed. Where the rules cannot be used, what is wrong with the
    /// case files by themselves is told all the same.</summary>
    private static int Check(RuleFolders folders)
    {
        var parsing = Task.Run(() => CaseFiles.Parse(folders));
        if (RuleFolder.Review(folders) is not { } reviewed)
        {
            var broken = parsing.GetAwaiter().GetResult().Errors.Where(error => error.Code != ErrorCode.FileNotRead).ToList();
            Messages.Print(Console.Error, broken, folders.Rules);
            Console.Error.WriteLine($"{broken.Count} {(broken.Count == 1 ? "error" : "errors")} in case files so far; what they ask can be checked once the rules are right.");
            return 1;
        }

        var (catalogue, cases) = (reviewed.Book.Catalogue, CaseFiles.Read(parsing.GetAwaiter().GetResult(), folders, reviewed.Book));
        Messages.Print(Console.Out, reviewed.Warnings.Concat(cases.Warnings), folders.Rules);
        var errors = cases.Errors.Count == 0 ? "no error" : $"{cases.Errors.Count} errors in case files";
        Console.WriteLine(
            $"{catalogue.Rules.Count} rules, {catalogue.Symptoms.Count} symptoms, {catalogue.Faults.Count} faults, {catalogue.Checks.Count} checks, {catalogue.Cautions.Count} cautions, {cases.Cases.Count} cases: {errors}, {reviewed.Warnings.Count + cases.Warnings.Count} warnings.");
        return cases.Errors.Count == 0 ? 0 : 1;
    }

    private static int Test(RuleFolders folders)
    {
        if (RuleFolder.Load(folders) is not { } book)
            return 1;
        var cases = CaseFiles.Read(folders, book);
        var runner = new CaseRunner(book);
        var failed = cases.Cases.Select(runner.Run).Where(result => !result.Passed).ToList();
        foreach (var result in failed)
            Console.WriteLine(result);
        if (failed.Count > 0)
            Console.WriteLine($"'rules why {failed[0].Case.Id} [FAULT or CHECK]' shows in numbers how it came to that.");
        Console.WriteLine($"{cases.Cases.Count} cases, {failed.Count} fail, {cases.Errors.Count} errors in case files.");
        var phrases = new PhraseRunner(book.Catalogue);
        var misread = phrases.Misread();
        foreach (var phrase in misread)
            Console.WriteLine(phrase);
        Console.WriteLine($"{phrases.Count} phrases, {misread.Count} misread.");
        return failed.Count + cases.Errors.Count + misread.Count == 0 ? 0 : 1;
    }
}
