using System.Text.Json;

namespace AdviceService.Tests.Complaints;

/// <summary>A phrase by an author who has not seen the vocabulary.</summary>
/// <param name="Text">What is said.</param>
/// <param name="Expect">Ids of symptoms of which any is right; empty where nothing is noticed.</param>
/// <param name="Denied">Ids of symptoms that are denied and must not be read as present.</param>
/// <param name="OffTopic">Whether it is not about a vehicle's trouble at all.</param>
/// <param name="Read">Whether it was read while phrases were written; the others were only counted.</param>
public sealed record AuthoredPhrase(string Text, IReadOnlyList<string> Expect, IReadOnlyList<string> Denied, bool OffTopic, bool Read)
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>The phrases of an author.</summary>
    /// <param name="author">Which author: from "second" to "fifth".</param>
    public static IReadOnlyList<AuthoredPhrase> Of(string author) =>
    [
        .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Complaints", $"{author}-author.jsonl")).Where(line => line.Length > 0)
            .Select(line => JsonSerializer.Deserialize<AuthoredPhrase>(line, Json)!)
            .Select(phrase => phrase with { Expect = phrase.Expect ?? [], Denied = phrase.Denied ?? [] }),
    ];
}
