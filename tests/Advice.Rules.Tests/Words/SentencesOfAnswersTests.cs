using System.Text.Json;
using Advice.Documents;
using Advice.Documents.Requests;
using Advice.Rules.Cases;
using Advice.Rules.Tests.Cases;
using Xunit.Abstractions;

namespace Advice.Rules.Tests.Words;

/// <summary>What answers say comes from the rule files: code only fills in and joins.</summary>
public class SentencesOfAnswersTests(ITestOutputHelper output)
{
    private const int OfTheOtherRoutes = 20;

    /// <summary>Members that hold the caller's own words, name documents or describe computations.</summary>
    private static readonly HashSet<string> NotOurs =
        ["source", "sources", "formula", "program", "notUnderstood", "words", "about", "since", "plot", "at", "value", "position"];

    private static readonly RuleTexts Texts = new(RepositoryRules.Directory);
    private static readonly GiveAdvice Advice = new(RepositoryRules.Book, new CaseClock());

    private static readonly IReadOnlyList<AdviceRequest> Requests =
        [.. CaseFolder.Read(RepositoryRules.Directory, RepositoryRules.Book.Catalogue, PlainRequest.Read).Cases.Select(one => one.Given)];

    [Theory]
    [InlineData("owner")]
    [InlineData("technician")]
    public void Answers_OfAllCases_AreMadeOfRuleTexts(string audience)
    {
        var requests = Requests.Select(request => request with { Workshop = (request.Workshop ?? new WorkshopDescription()) with { Audience = audience } }).ToList();
        var answers = requests.Select(request => Json(Advice.To(request)))
            .Concat(requests.Where((_, i) => i % OfTheOtherRoutes == 0).SelectMany(OtherRoutes));

        var (strange, texts) = (new SortedSet<string>(StringComparer.Ordinal), new HashSet<string>());
        foreach (var answer in answers)
            Collect(answer, null, texts);
        strange.UnionWith(texts.Where(text => !Texts.Make(text)));

        output.WriteLine($"{texts.Count} texts to the {audience}, {strange.Count} of them not from the rules");
        Assert.True(texts.Count > 10_000, $"only {texts.Count} texts were looked at");
        Assert.True(strange.Count == 0, string.Join('\n', strange.Take(20)));
    }

    /// <summary>The rule above would see a sentence of another make.</summary>
    [Theory]
    [InlineData("First step: Look at the brakes with both eyes.", false)]
    [InlineData("It may be driven as usual until it is looked at. It is a nice vehicle.", false)]
    [InlineData("It may be driven as usual until it is looked at.", true)]
    [InlineData("stated: at least 1.6 mm", true)]
    public void Make_SentenceOfAnotherMake_IsSeen(string text, bool made) => Assert.Equal(made, Texts.Make(text));

    private static IEnumerable<JsonElement> OtherRoutes(AdviceRequest request)
    {
        yield return Json(Advice.Intake(request));
        yield return Json(Advice.Inspect(request));
        yield return Json(Advice.Judge(request));
        yield return Json(Advice.Reckon(request));
        if (Advice.To(request).Suspects is [_, _, _, _, var fifth, ..])
            yield return Json(Advice.WhyNot(new WhyNotRequest(request, fifth.Fault, null)));
    }

    /// <summary>All texts; what a question quotes of the caller's own words is left out of it.</summary>
    private static void Collect(JsonElement json, string? quoted, HashSet<string> texts)
    {
        switch (json.ValueKind)
        {
            case JsonValueKind.Object:
                var about = json.TryGetProperty(nameof(QuestionDocument.About), out var words) ? words.GetString() : null;
                foreach (var one in json.EnumerateObject().Where(one => !NotOurs.Contains(char.ToLowerInvariant(one.Name[0]) + one.Name[1..])))
                    Collect(one.Value, about, texts);
                break;
            case JsonValueKind.Array:
                foreach (var one in json.EnumerateArray())
                    Collect(one, quoted, texts);
                break;
            case JsonValueKind.String:
                texts.Add(quoted is null ? json.GetString()! : json.GetString()!.Replace($"“{quoted}”", "“…”", StringComparison.Ordinal));
                break;
        }
    }

    private static JsonElement Json<T>(T document) => JsonSerializer.SerializeToElement(document);
}
