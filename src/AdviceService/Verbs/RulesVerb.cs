using System.CommandLine;
using System.Text.Json;
using Advice.Rules.Cases;
using AdviceService.Requests;

namespace AdviceService.Verbs;

/// <summary>The verb "rules": what a rule author needs.</summary>
internal static class RulesVerb
{
    public static Command Command(Option<string> rules)
    {
        var check = new Command("check", "Check all rule files and name every error");
        check.SetAction(parsed => Check(parsed.GetValue(rules)!));
        var test = new Command("test", "Ask the rules what their cases ask and compare");
        test.SetAction(parsed => Test(parsed.GetValue(rules)!));
        return new Command("rules", "Work on the rule files") { check, test };
    }

    private static int Check(string folder)
    {
        if (RuleFolder.Load(folder)?.Catalogue is not { } catalogue)
            return 1;
        Console.WriteLine(
            $"{catalogue.Rules.Count} rules, {catalogue.Symptoms.Count} symptoms, {catalogue.Faults.Count} faults, {catalogue.Checks.Count} checks, {catalogue.Cautions.Count} cautions: no error.");
        return 0;
    }

    private static int Test(string folder)
    {
        if (RuleFolder.Load(folder) is not { } book)
            return 1;
        var reader = new RequestReader(book.Catalogue);
        var cases = CaseFolder.Read(folder, book.Catalogue, Read);
        foreach (var error in cases.Errors)
            Console.Error.WriteLine(error);
        var runner = new CaseRunner(book);
        var failed = cases.Cases.Select(runner.Run).Where(result => !result.Passed).ToList();
        foreach (var result in failed)
            Console.WriteLine(result);
        Console.WriteLine($"{cases.Cases.Count} cases, {failed.Count} fail, {cases.Errors.Count} errors in case files.");
        return failed.Count == 0 && cases.Errors.Count == 0 ? 0 : 1;

        GivenRequest Read(JsonElement given, DateOnly today)
        {
            var request = reader.Read(given, today);
            return new GivenRequest(request.Value, [.. request.Errors.Select(error => (error.Pointer, error.Detail))]);
        }
    }
}
