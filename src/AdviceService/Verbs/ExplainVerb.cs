using System.CommandLine;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Words;
using Advice.Rules.Bench;
using Advice.Rules.Bench.Sensitivity;

namespace AdviceService.Verbs;

/// <summary>The verb "rules explain": all that the rules say about one thing, or how much the answers depend on it.</summary>
internal static class ExplainVerb
{
    public static Command Command(RuleOptions rules)
    {
        var id = new Argument<string?>("ID")
        {
            Description = "Id of a rule, fault, check, symptom, trouble code or caution",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var sensitivity = new Option<bool>("--sensitivity")
        {
            Description = "Vary how often links show by a notch and base rates by a factor of two, and say how many first steps of the cases stay; with an ID only that link or fault",
        };
        var draws = new Option<int>("--draws") { Description = "How many random variations of the whole set", DefaultValueFactory = _ => 10 };
        var explain = new Command("explain", "Show everything that refers to an id, in words and numbers, or how much depends on it") { id, sensitivity, draws };
        explain.Validators.Add(result =>
        {
            if (result.GetValue(id) is null && !result.GetValue(sensitivity))
                result.AddError("Name an ID, or ask for the --sensitivity of the whole set.");
        });
        draws.Validators.Add(given =>
        {
            if (given.GetValueOrDefault<int>() < 1)
                given.AddError("--draws must be at least 1.");
        });
        explain.SetAction(parsed => parsed.GetValue(sensitivity)
            ? Vary(rules.ForAuthor(parsed), parsed.GetValue(id), parsed.GetValue(draws))
            : Explain(rules.ForAuthor(parsed), parsed.GetValue(id)!));
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
        return lines.Count > 0 ? 0 : Unknown("Nothing has the id", id, explanation.Ids);
    }

    private static int Vary(RuleFolders folders, string? id, int draws)
    {
        if (RuleFolder.Load(folders) is not { } book)
            return 1;
        var catalogue = book.Catalogue;
        var alone = id is null ? [] : Variation.Of(id, catalogue).ToList();
        if (id is not null && alone.Count == 0)
            return Unknown("No link or fault has the id", id, catalogue.Faults.Keys.Concat(catalogue.Rules.Values.OfType<ShowsRule>().Select(rule => rule.Id)));
        var stability = new Stability(book, CaseFiles.Read(folders, book).Cases);
        if (stability.Cases == 0)
        {
            Console.Error.WriteLine("There is no case with a step.");
            return 1;
        }

        var lines = id is not null
            ? StabilityReport.Single(alone.Select(stability.Under))
            : StabilityReport.Whole(
                [.. Variation.OneAtATime(catalogue).Select(stability.Under)],
                [.. Enumerable.Range(1, draws).Select(seed => stability.Under(Variation.AtRandom(catalogue, seed)))]);
        foreach (var line in lines)
            Console.WriteLine(line);
        return 0;
    }

    private static int Unknown(string what, string id, IEnumerable<string> known)
    {
        Console.Error.WriteLine($"{what} '{id}'{(NearestWord.To(id, known) is { } near ? $"; did you mean '{near}'?" : ".")}");
        return 1;
    }
}
