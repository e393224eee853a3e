using System.CommandLine;
using System.Globalization;
using Advice.Rules.Bench;
using Advice.Rules.Cases;

namespace AdviceService.Verbs;

/// <summary>The verb "rules cover": what of the rules no case touches.</summary>
internal static class CoverVerb
{
    public static Command Command(RuleOptions rules)
    {
        var least = new Option<double?>("--at-least") { Description = "Fail where the cases touch a smaller share of a kind than this, 0 … 1" };
        var list = new Option<bool>("--list") { Description = "List the ids that no case touches" };
        var cover = new Command("cover", "Show how much of the rules the cases touch") { least, list };
        cover.SetAction(parsed => Cover(rules.Of(parsed), parsed.GetValue(least) ?? 0, parsed.GetValue(list)));
        return cover;
    }

    private static int Cover(RuleFolders folders, double least, bool list)
    {
        if (RuleFolder.Load(folders) is not { } book)
            return 1;
        var cases = CaseFiles.Read(folders, book);
        var assessor = new CaseAssessor(book);
        var kinds = new Coverage(book.Catalogue, cases.Cases.Select(assessor.Assess)).Kinds;
        foreach (var kind in kinds)
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{kind.Share,6:P1}  {kind.Kind}: {kind.Count - kind.Untouched.Count} of {kind.Count}"));
            foreach (var id in list ? kind.Untouched : [])
                Console.WriteLine($"        {id}");
        }

        var below = kinds.Where(kind => kind.Share < least).Select(kind => kind.Kind).ToList();
        if (below.Count > 0)
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Below {least:P0}: {string.Join(", ", below)}."));
        return below.Count == 0 && cases.Errors.Count == 0 ? 0 : 1;
    }
}
