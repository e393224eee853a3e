using System.CommandLine;
using System.Globalization;
using Advice.Rules.Bench;
using Advice.Rules.Bench.Conditions;
using Advice.Rules.Bench.Probes;
using Advice.Rules.Cases;

namespace AdviceService.Verbs;

/// <summary>The verb "rules cover": which conditions of rules the cases showed both ways, and what of the vocabulary they touch.</summary>
internal static class CoverVerb
{
    public static Command Command(RuleOptions rules)
    {
        var least = new Option<double>("--at-least") { Description = "Fail where the cases showed less than this percentage of all conditions both ways" };
        var list = new Option<bool>("--list") { Description = "List the conditions that were never seen both ways, and the ids that no case touches" };
        var probes = new Option<bool>("--probes") { Description = "Make up cases for each condition of each rule, met, contradicted and left open, and show what they show beside the cases" };
        var cover = new Command("cover", "Show which conditions of rules the cases showed both ways") { least, list, probes };
        cover.SetAction(parsed => Cover(rules.ForAuthor(parsed), parsed.GetValue(least), parsed.GetValue(list), parsed.GetValue(probes)));
        return cover;
    }

    private static int Cover(RuleFolders folders, double least, bool list, bool probes)
    {
        if (RuleFolder.Load(folders) is not { } book)
            return 1;
        var cases = CaseFiles.Read(folders, book);
        var assessor = new CaseAssessor(book);
        var assessed = cases.Cases.AsParallel().AsOrdered().Select(assessor.Assess).ToList();
        Console.WriteLine("Conditions that the cases showed both ways: the rule fired with it, and it alone kept the rule from firing");
        var conditions = new ConditionCoverage(book.Catalogue, assessed).Conditions;
        foreach (var kind in conditions.GroupBy(condition => condition.Kind))
            Write($"{kind.Key} rules", kind.Count(), [.. kind.Where(condition => !condition.BothWays).Select(condition => condition.ToString())], list);
        Console.WriteLine();
        Console.WriteLine("Entries that a case touches");
        foreach (var kind in new Coverage(book.Catalogue, assessed).Kinds)
            Write(kind.Kind, kind.Count, kind.Untouched, list);
        if (probes)
        {
            Console.WriteLine();
            foreach (var line in new ProbeReport(new RuleProbes(book).Rules, conditions).Lines(list))
                Console.WriteLine(line);
        }

        var seen = conditions.Count(condition => condition.BothWays);
        var share = conditions.Count == 0 ? 1 : (double)seen / conditions.Count;
        Console.WriteLine();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Percent(share)} of the conditions seen both ways: {seen} of {conditions.Count}, by {cases.Cases.Count} cases."));
        if (share * 100 < least)
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Below {least} %; --list names what was never seen."));
        return share * 100 >= least && cases.Errors.Count == 0 ? 0 : 1;
    }

    private static void Write(string what, int count, IReadOnlyList<string> unseen, bool list)
    {
        Console.WriteLine($"{Percent(count == 0 ? 1 : 1 - ((double)unseen.Count / count)),8}  {what}: {count - unseen.Count} of {count}");
        foreach (var one in list ? unseen : [])
            Console.WriteLine($"          {one}");
    }

    // Rounded down, so that what is printed never says more than the threshold does.
    private static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(share * 1000) / 10:0.0} %");
}
