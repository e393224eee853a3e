using System.CommandLine;
using System.Text.Json;
using AdviceService.Http;
using AdviceService.Http.Problems;
using AdviceService.Json;
using AdviceService.Terminal;
using Spectre.Console;

namespace AdviceService.Verbs;

/// <summary>The verb "advise": advice on one request, in the terminal.</summary>
internal static class AdviseVerb
{
    public static Command Command(RuleOptions rules)
    {
        var file = new Argument<string>("FILE") { Description = "A request as JSON; - reads it from standard input" };
        var json = new Option<bool>("--json") { Description = "Print the document as JSON" };
        var advise = new Command("advise", "Give advice on one request") { file, json };
        advise.SetAction(parsed => Advise(parsed.GetValue(file)!, parsed.GetValue(json), rules.Of(parsed)));
        return advise;
    }

    private static int Advise(string file, bool json, RuleFolders rules)
    {
        if (Read(file) is not { } request || RuleFolder.Load(rules) is not { } book)
            return 1;
        var answer = new AdviceDesk(book, TimeProvider.System).Answer(request);
        if (answer.Value is not { } advice)
        {
            if (json)
                Console.WriteLine(JsonSerializer.Serialize(ProblemDocument.Of(answer.Status, answer.Errors), Written.As.ProblemDocument));
            foreach (var error in answer.Errors)
                Console.Error.WriteLine($"{file}#{error.Pointer}: {error.Detail}");
            return 1;
        }

        if (json)
            Console.WriteLine(JsonSerializer.Serialize(advice, Written.As.AdviceDocument));
        else
            new AdvicePrinter(AnsiConsole.Console).Print(advice);
        return 0;
    }

    private static byte[]? Read(string file)
    {
        try
        {
            if (file != "-")
                return File.ReadAllBytes(file);
            using var input = Console.OpenStandardInput();
            using var all = new MemoryStream();
            input.CopyTo(all);
            return all.ToArray();
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"{file}: {unreadable.Message}");
            return null;
        }
    }
}
