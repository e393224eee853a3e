using System.CommandLine;
using System.Text.Json;
using Advice;
using Advice.Documents;
using Advice.Rules.Bench;
using Advice.Rules.Cases;
using Advice.Rules.RuleSets;
using AdviceService.Requests;

namespace AdviceService.Verbs;

/// <summary>The verb "rules diff": what two rule folders answer differently.</summary>
internal static class DiffVerb
{
    public static Command Command(RuleOptions rules)
    {
        var was = new Argument<string>("A") { Description = "Folder of the rules as they were" };
        var now = new Argument<string>("B") { Description = "Folder of the rules as they are; overlays are laid over this one" };
        var requests = new Option<string?>("--requests") { Description = "File of further requests, one JSON object per line" };
        var diff = new Command("diff", "Show which answers to the cases of both folders change") { was, now, requests };
        diff.SetAction(parsed => Diff(new(parsed.GetValue(was)!, []), new(parsed.GetValue(now)!, rules.ForAuthor(parsed).Overlays), parsed.GetValue(requests)));
        return diff;
    }

    private static int Diff(RuleFolders was, RuleFolders now, string? requests)
    {
        if (RuleFolder.Load(was) is not { } before || RuleFolder.Load(now) is not { } after)
            return 1;
        // A case in both folders counts as it stands in the second.
        var asked = CaseFiles.Given(now, after).Concat(CaseFiles.Given(was, before)).DistinctBy(one => one.Id).ToList();
        if (requests is not null && !Add(requests, asked))
            return 1;
        var (first, second) = (Answering(before), Answering(after));
        var answers = asked.Select(one => (one.Id, Was: first(one.Given), Is: second(one.Given))).ToList();
        var changes = answers.Where(one => one.Was is not null && one.Is is not null)
            .Select(one => (one.Id, Change: AnswerChange.Between(one.Was!, one.Is!))).Where(one => !one.Change.IsNone).ToList();
        foreach (var (id, change) in changes.OrderByDescending(one => one.Change.IsLaxer))
            Console.WriteLine($"{id}: {change}");
        foreach (var one in answers.Where(one => one.Was is null || one.Is is null))
            Console.WriteLine($"{one.Id}: {(one.Is is null ? (one.Was is null ? "neither set" : "only the first set") : "only the second set")} can read the request");
        Console.WriteLine(
            $"{answers.Count} requests: {changes.Count} answers change, {changes.Count(one => one.Change.First is not null)} first steps, {changes.Count(one => one.Change.Suspect is not null)} first suspects, {changes.Count(one => one.Change.Driving is not null)} driving advices ({changes.Count(one => one.Change.IsLaxer)} laxer), {changes.Count(one => one.Change.CautionsLost.Count > 0)} with fewer cautions.");
        return 0;
    }

    private static Func<JsonElement, AdviceDocument?> Answering(RuleBook book)
    {
        var (reader, advice) = (new RequestReader(book.Catalogue), new GiveAdvice(book, new CaseClock()));
        return given => reader.ReadLine(given, CaseClock.Today).Request.Value is { } request ? advice.To(request) : null;
    }

    private static bool Add(string file, List<(string Id, JsonElement Given)> asked)
    {
        try
        {
            foreach (var (index, line) in File.ReadLines(file).Index())
            {
                if (!string.IsNullOrWhiteSpace(line))
                    asked.Add(($"{Path.GetFileName(file)} line {index + 1}", JsonDocument.Parse(line).RootElement));
            }

            return true;
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException or JsonException)
        {
            Console.Error.WriteLine($"{file}: {unreadable.Message}");
            return false;
        }
    }
}
