using System.CommandLine;
using Advice.Knowledge.Words;
using Advice.Rules.Bench;
using Advice.Rules.Cases;

namespace AdviceService.Verbs;

/// <summary>The verb "rules why": how a case came to its answer.</summary>
internal static class WhyVerb
{
    public static Command Command(RuleOptions rules)
    {
        var @case = new Argument<string>("CASE") { Description = "Id of a case" };
        var about = new Argument<string?>("FAULT|CHECK") { Description = "Id of a fault or check of which to show the whole way", Arity = ArgumentArity.ZeroOrOne };
        var why = new Command("why", "Show how a case came to its answer, in numbers") { @case, about };
        why.SetAction(parsed => Explain(rules.ForAuthor(parsed), parsed.GetValue(@case)!, parsed.GetValue(about)));
        return why;
    }

    private static int Explain(RuleFolders folders, string id, string? about)
    {
        if (RuleFolder.Load(folders) is not { } book)
            return 1;
        var cases = CaseFiles.Read(folders, book).Cases;
        if (cases.FirstOrDefault(one => one.Id == id) is not { } @case)
            return Unknown("case", id, cases.Select(one => one.Id));
        var (catalogue, assessor) = (book.Catalogue, new CaseAssessor(book));
        var advised = assessor.Assess(@case);
        var why = new Why(catalogue, @case, advised);
        var (isFault, isCheck) = (catalogue.Faults.ContainsKey(about ?? ""), catalogue.Checks.ContainsKey(about ?? ""));
        if (about is not null && !isFault && !isCheck)
            return Unknown("fault or check", about, catalogue.Faults.Keys.Concat(catalogue.Checks.Keys));
        var lines = about is null ? why.Lines() : why.Facts();
        if (isFault)
            lines = lines.Concat(new WhyFault(catalogue, advised).Of(about!));
        if (isCheck)
            lines = lines.Concat(new WhyCheck(catalogue, assessor.AssessAll(@case), advised.Case.MostSteps).Of(about!));
        foreach (var line in lines)
            Console.WriteLine(line);
        return 0;
    }

    private static int Unknown(string noun, string id, IEnumerable<string> known)
    {
        Console.Error.WriteLine($"There is no {noun} '{id}'{(NearestWord.To(id, known) is { } near ? $"; did you mean '{near}'?" : ".")}");
        return 1;
    }
}
