using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Advice;
using Advice.Rules.Cases;
using AdviceService.Json;

namespace Benchmarks;

/// <summary>All answers to the cases in one hash: what is made faster must answer the same, to the byte.</summary>
internal static class Answers
{
    public static string Hash(Corpus corpus)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var give = new GiveAdvice(corpus.Book, new CaseClock());
        foreach (var request in corpus.Requests)
            hash.AppendData(JsonSerializer.SerializeToUtf8Bytes(give.To(request), Written.As.AdviceDocument));
        var assessment = new Assessment(corpus.Book);
        foreach (var five in corpus.OfFiveSymptoms())
            hash.AppendData(Encoding.UTF8.GetBytes(Text(assessment.Of(five))));
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static string Text(Advised advised) => string.Join('\n', [
        .. advised.Suspicion.All.Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.Instance.Fault.Id} {one.Instance.Place} {one.Probability:R}")),
        .. advised.Steps.Select(step => string.Create(CultureInfo.InvariantCulture, $"{step.Check.Id} {step.OnlyIf} {step.Ranked.HarmFound:R} {step.Ranked.Lifted}")),
        .. advised.Driving.Select(rule => rule.Id), .. advised.Cautions.Select(rule => rule.Id)]);
}
