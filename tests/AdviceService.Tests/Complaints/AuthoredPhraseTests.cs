using System.Globalization;
using System.Text.Json;
using AdviceService.Tests.Http;
using Xunit.Abstractions;

namespace AdviceService.Tests.Complaints;

/// <summary>Phrases by authors who have not seen the vocabulary, read by intake. Wanted are 95 % found, 95 % rejected and nothing denied taken as present.</summary>
[Collection(Served.ByHttp)]
public class AuthoredPhraseTests(RunningService service, ITestOutputHelper output)
{
    /// <summary>The floors are what is reached so far.</summary>
    [Theory]
    [InlineData("second", true, 0.9, 0.95, 0.6, 1)]
    [InlineData("second", false, 0.85, 0.93, 0.6, 1)]
    [InlineData("third", true, 0.75, 0.9, 0.9, 0)]
    [InlineData("third", false, 0.8, 0.9, 0.9, 2)]
    [InlineData("fourth", true, 0.9, 0.9, 0.9, 0)]
    [InlineData("fourth", false, 0.7, 0.85, 0.9, 0)]
    [InlineData("fifth", true, 0.68, 0.85, 0.8, 0)]
    [InlineData("fifth", false, 0.6, 0.8, 0.73, 0)]
    [InlineData("sixth", true, 0.9, 0.95, 0.9, 0)]
    [InlineData("sixth", false, 0.72, 0.87, 0, 2)]
    public async Task Intake_PhrasesOfAnotherAuthor_UnderstoodDeniedAndRejected(
        string author, bool read, double leastUnderstood, double leastFound, double leastRejected, int mostWronglyPresent)
    {
        var (expected, understood, nothing, denied, offTopic) = (0, 0, 0, 0, 0);
        var (missed, taken, wronglyPresent) = (new List<string>(), new List<string>(), new List<string>());
        foreach (var phrase in AuthoredPhrase.Of(author).Where(phrase => phrase.Read == read))
        {
            var reading = await ReadAsync(phrase.Text);
            var symptoms = reading.GetProperty("symptoms").EnumerateArray().ToList();
            var present = symptoms.Where(symptom => symptom.GetProperty("present").GetBoolean()).Select(Symptom).ToList();
            denied += phrase.Denied.Count;
            wronglyPresent.AddRange(phrase.Denied.Where(present.Contains).Select(one => $"{one}: {phrase.Text}"));
            if (phrase.OffTopic)
            {
                offTopic++;
                if (symptoms.Count > 0)
                    taken.Add($"{string.Join(' ', present)}: {phrase.Text}");
            }
            else if (phrase.Expect.Count > 0)
            {
                expected++;
                understood += present.Any(phrase.Expect.Contains) ? 1 : 0;
                nothing += present.Count == 0 ? 1 : 0;
                if (!Candidates(reading, symptoms).Take(3).Any(phrase.Expect.Contains))
                    missed.Add($"{string.Join(' ', phrase.Expect)}: {phrase.Text}");
            }
        }

        var (found, rejected) = (expected - missed.Count, offTopic - taken.Count);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{author} author, {(read ? "read" : "not read")}: understood {understood}, among the first three {found} of {expected}, nothing understood {nothing}, rejected {rejected} of {offTopic}, denied but present {wronglyPresent.Count} of {denied}"));
        if (read)
            output.WriteLine(string.Join('\n', [.. missed, "Taken for a complaint:", .. taken, "Denied but present:", .. wronglyPresent]));
        Assert.True(wronglyPresent.Count <= mostWronglyPresent, string.Join('\n', wronglyPresent));
        Assert.True(understood >= leastUnderstood * expected, $"Only {understood} of {expected} are understood.");
        Assert.True(found >= leastFound * expected, $"Only {found} of {expected} are among the first three.");
        Assert.True(rejected >= leastRejected * offTopic, $"Only {rejected} of {offTopic} are rejected.");
    }

    /// <summary>What is understood as present, the surest first, then what the words may mean besides.</summary>
    private static IEnumerable<string> Candidates(JsonElement reading, List<JsonElement> symptoms) => symptoms
        .Where(symptom => symptom.GetProperty("present").GetBoolean())
        .Select(symptom => (Id: Symptom(symptom), Confidence: symptom.GetProperty("confidence").GetDouble()))
        .Concat(symptoms.SelectMany(symptom => symptom.GetProperty("alternatives").EnumerateArray()).Concat(
                reading.GetProperty("notUnderstood").EnumerateArray().SelectMany(unread => unread.GetProperty("guesses").EnumerateArray()))
            .Select(guess => (Id: Symptom(guess), Confidence: guess.GetProperty("confidence").GetDouble())))
        .OrderByDescending(one => one.Confidence).Select(one => one.Id).Distinct();

    private static string Symptom(JsonElement element) => element.GetProperty("symptom").GetString()!;

    private async Task<JsonElement> ReadAsync(string text)
    {
        var answer = await service.Client.PostAsync("/v1/intake", RunningService.Json($$"""{"text":{{JsonSerializer.Serialize(text)}}}"""));
        return JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement;
    }
}
