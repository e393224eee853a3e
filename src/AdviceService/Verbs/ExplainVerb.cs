using System.CommandLine;
using Advice.Knowledge;
using Advice.Rules.Bench;

namespace AdviceService.Verbs;

/// <summary>The verb "rules explain": all that the rules say about one thing.</summary>
internal static class ExplainVerb
{
    public static Command Command(RuleOptions rules)
    {
        var id = new Argument<string>("ID") { Description = "Id of a rule, fault, check, symptom, trouble code or caution" };
        var explain = new Command("explain", "Show everything that refers to an id, in words and numbers") { id };
        explain.SetAction(parsed => Explain(rules.Of(parsed), parsed.GetValue(id)!));
        return explain;
    }

    private static int Explain(RuleFolders folders, string id)
    {
        if (RuleFolder.Load(folders) is not { } book)
            return 1;
        var explanation = new Explanation(book.Catalogue);
        var lines = explanation.Of(id).ToList();
        foreach (var line in lines)
            Console.WriteLine(line);
        if (lines.Count > 0)
            return 0;
        Console.Error.WriteLine($"Nothing has the id '{id}'{(NearestWord.To(id, explanation.Ids) is { } near ? $"; did you mean '{near}'?" : ".")}");
        return 1;
    }
}
