using System.CommandLine;

namespace AdviceService.Verbs;

/// <summary>The verb "rules": what a rule author needs.</summary>
internal static class RulesVerb
{
    public static Command Command(Option<string> rules)
    {
        var check = new Command("check", "Check all rule files and name every error");
        check.SetAction(parsed => Check(parsed.GetValue(rules)!));
        return new Command("rules", "Work on the rule files") { check };
    }

    private static int Check(string folder)
    {
        if (RuleFolder.Load(folder)?.Catalogue is not { } catalogue)
            return 1;
        Console.WriteLine(
            $"{catalogue.Rules.Count} rules, {catalogue.Symptoms.Count} symptoms, {catalogue.Faults.Count} faults, {catalogue.Checks.Count} checks, {catalogue.Cautions.Count} cautions: no error.");
        return 0;
    }
}
