using System.Text.Json;

namespace AdviceService.Tests.Complaints;

/// <summary>A phrase by an author who has not seen the vocabulary.</summary>
/// <param name="Text">What is said.</param>
/// <param name="Expect">Ids of symptoms of which any is right; empty where nothing is expected.</param>
/// <param name="Denied">Ids of symptoms that are denied and must not be read as present.</param>
/// <param name="OffTopic">Whether it is not about a vehicle's trouble at all.</param>
/// <param name="Read">Whether it was read while phrases were written; the others were only counted.</param>
public sealed record SecondAuthorPhrase(string Text, IReadOnlyList<string> Expect, IReadOnlyList<string> Denied, bool OffTopic, bool Read)
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>The phrases of second-author.jsonl; none where it is not there.</summary>
    public static IReadOnlyList<SecondAuthorPhrase> All()
    {
        var file = Path.Combine(AppContext.BaseDirectory, "Complaints", "second-author.jsonl");
        Skip.IfNot(File.Exists(file), "There are no phrases by a second author yet.");
        return
        [
            .. File.ReadLines(file).Where(line => line.Length > 0).Select(line => JsonSerializer.Deserialize<SecondAuthorPhrase>(line, Json)!)
                .Select(phrase => phrase with { Expect = phrase.Expect ?? [], Denied = phrase.Denied ?? [] }),
        ];
    }
}
