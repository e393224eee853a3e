using System.Text.Json;
using Advice.Documents.Requests;
using Advice.Rules.Cases;
using Advice.Rules.RuleSets;
using AdviceService.Requests;

namespace AdviceService.Verbs;

/// <summary>Reads the cases beside the rules that a verb works with.</summary>
internal static class CaseFiles
{
    /// <summary>The cases, each read as the service reads a request; every error is printed.</summary>
    public static CaseSet Read(RuleFolders folders, RuleBook book) => Read(Parse(folders), folders, book, []);

    /// <summary>The same of cases that were parsed.</summary>
    public static CaseSet Read(ParsedCases parsed, RuleFolders folders, RuleBook book) => Read(parsed, folders, book, []);

    /// <summary>The requests of the cases as they stand there.</summary>
    public static IReadOnlyList<(string Id, JsonElement Given)> Given(RuleFolders folders, RuleBook book)
    {
        var given = new Dictionary<AdviceRequest, JsonElement>(ReferenceEqualityComparer.Instance);
        return [.. Read(Parse(folders), folders, book, given).Cases.Select(one => (one.Id, given[one.Given]))];
    }

    /// <summary>The case files, parsed.</summary>
    public static ParsedCases Parse(RuleFolders folders) => CaseFolder.Parse(folders.Rules, folders.Overlays);

    private static CaseSet Read(ParsedCases parsed, RuleFolders folders, RuleBook book, Dictionary<AdviceRequest, JsonElement> requests)
    {
        var reader = new RequestReader(book.Catalogue);
        var cases = parsed.Bind(book.Catalogue, Read);
        Messages.Print(Console.Error, cases.Errors, folders.Rules);
        return cases;

        GivenRequest Read(JsonElement given, DateOnly today)
        {
            var request = reader.Read(given, today);
            if (request.Value is { } read)
                requests[read] = given;
            return new GivenRequest(request.Value, [.. request.Errors.Select(error => (error.Pointer, error.Detail))]);
        }
    }
}
