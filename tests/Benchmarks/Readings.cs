using System.Security.Cryptography;
using System.Text.Json;
using Advice.Knowledge;
using Advice.Symptoms;

namespace Benchmarks;

/// <summary>What is read from texts made of the phrases of the rules, in one hash: whole phrases, several in a sentence, and phrases that lack a word.</summary>
internal static class Readings
{
    private const int Every = 7;

    public static string Hash(Catalogue catalogue)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var reader = new ComplaintReader(catalogue);
        foreach (var text in Texts(catalogue))
            hash.AppendData(JsonSerializer.SerializeToUtf8Bytes(reader.Read(text)));
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static IEnumerable<string> Texts(Catalogue catalogue)
    {
        var phrases = catalogue.Symptoms.Values.OrderBy(symptom => symptom.Id, StringComparer.Ordinal).SelectMany(symptom => symptom.Phrases)
            .Select(phrase => phrase.Replace("<", "", StringComparison.Ordinal).Replace(">", "", StringComparison.Ordinal)).ToList();
        for (var i = 0; i < phrases.Count; i += Every)
        {
            var (one, other) = (phrases[i], phrases[i * 31 % phrases.Count]);
            var words = one.Split(' ');
            yield return $"{one} and {other} when braking.";
            yield return $"It has {other} since last week, no {one}. {phrases[i * 17 % phrases.Count]}";
            yield return string.Join(' ', words.Where((_, place) => place != i % words.Length));
        }
    }
}
