using Advice.Knowledge.Signs;
using Advice.Symptoms.Snapshots;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Resemblances;

/// <summary>
/// What sentences resemble as a whole, phrase or no phrase: by what was learned from all phrases about their words, by the nearest phrase of each symptom
/// and by all phrases of a symptom together.
/// </summary>
internal sealed class SecondOpinion
{
    /// <summary>How much the nearest phrase counts; the rest of nearness is how much all phrases together do.</summary>
    private const double OfNearest = 0.5;

    /// <summary>Weight of nearness beside what was learned.</summary>
    private const double OfNearness = 2;

    /// <summary>
    /// How fast the probability falls with the score: the value at which texts of owners that were not learned from are least surprising (mean log loss).
    /// </summary>
    private const double Sharpness = 7;

    private readonly Dictionary<string, int> numbers;
    private readonly Lazy<(TermVectors Phrases, TermVectors Symptoms)> vectors;
    private readonly LinearClassifier classifier;

    /// <summary>An opinion by the phrases, sentences, names and questions of these symptoms.</summary>
    /// <param name="known">The symptoms.</param>
    /// <param name="nothing">Sentences that tell of none of them.</param>
    /// <param name="vocabulary">Reads their phrases.</param>
    public SecondOpinion(IReadOnlyList<Symptom> known, IReadOnlyList<string> nothing, Vocabulary vocabulary)
    {
        Meanings = [.. known.Select(s => s.Id)];
        numbers = Numbers(Meanings);
        var said = known.Select(s => s.Phrases.Concat(s.Sentences).Append(s.Name.Plain).Append(s.Name.Trade).Append(s.Ask).Distinct()).Append(nothing)
            .SelectMany((texts, meaning) => texts.Select(text => (Meaning: meaning, Words: vocabulary.ReadPhrase(text, w => w.Kind == WordKind.Content)))).ToList();
        var pairs = said.Select(p => (p.Meaning, (IReadOnlyDictionary<string, double>)SentenceTerms.WithPairs(p.Words))).ToList();
        vectors = new(() => (new(pairs), new([.. pairs.GroupBy(p => p.Meaning).Select(own => (own.Key, (IReadOnlyDictionary<string, double>)Together(own.Select(p => p.Item2))))])));
        classifier = new(known.Count + 1, [.. said.Select(p => (p.Meaning, (IReadOnlyDictionary<string, double>)SentenceTerms.Of(p.Words)))]);
    }

    /// <summary>The opinion that <see cref="Write"/> wrote.</summary>
    public SecondOpinion(ReadOnlyMemory<byte> written)
    {
        var bytes = WrittenBytes.Open(written);
        Meanings = [.. Enumerable.Range(0, bytes.Read7BitEncodedInt()).Select(_ => bytes.ReadString())];
        numbers = Numbers(Meanings);
        classifier = new(bytes);
        vectors = new(() => (new(bytes), new(bytes)));
    }

    /// <summary>Ids of the symptoms, by number; the number after the last stands for none of them.</summary>
    public IReadOnlyList<string> Meanings { get; }

    /// <summary>Writes all that it is formed from, to the bit.</summary>
    public void Write(BinaryWriter bytes)
    {
        bytes.Write7BitEncodedInt(Meanings.Count);
        foreach (var id in Meanings)
            bytes.Write(id);
        classifier.Write(bytes);
        vectors.Value.Phrases.Write(bytes);
        vectors.Value.Symptoms.Write(bytes);
    }

    /// <summary>The opinion on a sentence.</summary>
    /// <param name="sentence">Its words that count.</param>
    public Resemblance On(IReadOnlyList<Word> sentence) => new(this, sentence);

    /// <summary>The number of a symptom; null where it is a symptom of which there is no opinion.</summary>
    internal int? Number(string symptom) => numbers.TryGetValue(symptom, out var number) ? number : null;

    /// <summary>Whether phrases of the symptom have a word.</summary>
    internal bool Knows(int meaning, Word word) => vectors.Value.Symptoms.Has(meaning, word.Term);

    /// <summary>How much a sentence speaks for each symptom by what was learned alone, which needs no pass over all phrases; by number.</summary>
    internal float[] Learned(IReadOnlyList<Word> sentence) => classifier.Scores(SentenceTerms.Of(sentence));

    /// <summary>How probable each symptom is as the one that a sentence tells of, if it tells of one; by number.</summary>
    /// <param name="sentence">Its words that count.</param>
    /// <param name="learned">What was learned says of it.</param>
    internal double[] Probabilities(IReadOnlyList<Word> sentence, float[] learned)
    {
        if (learned.Length == 0)
            return [];
        var near = new double[learned.Length];
        var terms = SentenceTerms.WithPairs(sentence);
        vectors.Value.Phrases.AddTo(near, terms, OfNearest);
        vectors.Value.Symptoms.AddTo(near, terms, 1 - OfNearest);
        double[] scores = [.. near.Select((one, meaning) => Sharpness * (learned[meaning] + (OfNearness * one)))];
        var most = scores.Max();
        double[] odds = [.. scores.Select(score => Math.Exp(score - most))];
        var sum = odds.Sum();
        return [.. odds.Select(one => Math.Round(one / sum, 4))];
    }

    private static Dictionary<string, int> Numbers(IReadOnlyList<string> meanings) =>
        meanings.Select((id, number) => (id, number)).ToDictionary(s => s.id, s => s.number, StringComparer.Ordinal);

    private static Dictionary<string, double> Together(IEnumerable<IReadOnlyDictionary<string, double>> phrases) => phrases.SelectMany(p => p)
        .GroupBy(t => t.Key, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Max(t => t.Value), StringComparer.Ordinal);
}
