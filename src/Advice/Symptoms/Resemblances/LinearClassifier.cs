using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using Advice.Symptoms.Snapshots;

namespace Advice.Symptoms.Resemblances;

/// <summary>
/// Tells meanings apart by the terms of a text, each term with a weight for each meaning. The weights are learned from examples by the
/// passive-aggressive rule PA-I for several classes (Crammer, Dekel, Keshet, Shalev-Shwartz and Singer, "Online Passive-Aggressive Algorithms",
/// JMLR 7, 2006) and averaged over the steps of learning (as in Collins, "Discriminative Training Methods for Hidden Markov Models", 2002). The order of the examples
/// is fixed and vectors only do what would be done number by number, so that the same examples give the same weights on any machine.
/// </summary>
internal sealed class LinearClassifier
{
    /// <summary>The most that one example may move the weights, the C of PA-I.</summary>
    private const float Aggressiveness = 0.5f;

    /// <summary>How often all examples are gone through; more passes changed nothing on texts that were not learned from.</summary>
    private const int Passes = 3;

    /// <summary>An example should score so much higher for its own meaning than for any other.</summary>
    private const float Margin = 1;

    private readonly int meanings;
    private readonly TextTable known;

    /// <summary>For each term the meanings that it has a weight for, and the weights.</summary>
    private readonly WrittenLists<ushort> listed;
    private readonly WrittenLists<float> values;
    private readonly TermWeights?[] made;

    /// <summary>Learns from examples.</summary>
    /// <param name="meanings">How many meanings there are.</param>
    /// <param name="examples">Number of the meaning, 0 … <paramref name="meanings"/> - 1, and terms with weights.</param>
    public LinearClassifier(int meanings, IReadOnlyList<(int Meaning, IReadOnlyDictionary<string, double> Terms)> examples)
    {
        this.meanings = meanings;
        var (latest, averaged) = (new Dictionary<string, float[]>(StringComparer.Ordinal), new Dictionary<string, float[]>(StringComparer.Ordinal));
        foreach (var term in examples.SelectMany(example => example.Terms.Keys).Distinct(StringComparer.Ordinal))
        {
            latest.Add(term, new float[meanings]);
            averaged.Add(term, new float[meanings]);
        }

        var shuffled = examples.Where(example => example.Terms.Count > 0).OrderBy(example => Place(example.Terms))
            .Select(example => (example.Meaning, Parts: Parts(example.Terms, latest), Averaged: Parts(example.Terms, averaged))).ToList();
        var (scores, steps) = (new float[meanings], meanings < 2 ? 0 : Passes * shuffled.Count);
        for (var step = 0; step < steps; step++)
        {
            var (own, parts, sums) = shuffled[step % shuffled.Count];
            Score(parts, scores);
            var rival = Rival(scores, own);
            var loss = Margin - scores[own] + scores[rival];
            if (loss <= 0)
                continue;
            // The shares of an example have the length 1, and the rule divides by twice its square.
            var rate = Math.Min(Aggressiveness, loss / 2);
            Move(parts, own, rival, rate);
            Move(sums, own, rival, rate * (steps - step) / steps);
        }

        known = new([.. averaged.Keys]);
        listed = new([.. averaged.Values.Select(row => Enumerable.Range(0, meanings).Where(meaning => row[meaning] != 0).Select(meaning => checked((ushort)meaning)).ToArray())]);
        values = new([.. averaged.Values.Select(row => Array.FindAll(row, weight => weight != 0))]);
        made = new TermWeights[known.Count];
    }

    /// <summary>What <see cref="Write"/> wrote.</summary>
    public LinearClassifier(BinaryReader bytes)
    {
        (meanings, known) = (bytes.Read7BitEncodedInt(), new(bytes));
        (listed, values) = (new(bytes), new(bytes));
        made = new TermWeights[known.Count];
    }

    /// <summary>Writes what was learned, to the bit.</summary>
    public void Write(BinaryWriter bytes)
    {
        bytes.Write7BitEncodedInt(meanings);
        known.Write(bytes);
        listed.WriteTo(bytes);
        values.WriteTo(bytes);
    }

    /// <summary>How much a text speaks for each meaning, by number; at best about 1 more for its own than for any other.</summary>
    /// <param name="text">Its terms with weights.</param>
    public float[] Scores(IReadOnlyDictionary<string, double> text)
    {
        var scores = new float[meanings];
        var length = Length(text);
        foreach (var (term, weight) in text)
        {
            if (known.Number(term) is var number and >= 0)
                Made(number).AddTo(scores, (float)(weight / length));
        }

        return scores;
    }

    /// <summary>Made twice where two texts ask at the same time, which does no harm.</summary>
    private TermWeights Made(int term) => made[term] ??= new(listed[term].ToArray(), values[term].ToArray(), meanings);

    /// <summary>A place among the examples that has nothing to do with the meaning, and stays the same when others are added.</summary>
    private static ulong Place(IReadOnlyDictionary<string, double> terms) =>
        BinaryPrimitives.ReadUInt64LittleEndian(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join(' ', terms.Keys.Order(StringComparer.Ordinal)))));

    /// <summary>The weights of the terms of a text with the share that each term has in it.</summary>
    private static (float[] Weights, float Share)[] Parts(IReadOnlyDictionary<string, double> text, Dictionary<string, float[]> weights)
    {
        var length = Length(text);
        return [.. text.Select(term => (weights[term.Key], (float)(term.Value / length)))];
    }

    private static double Length(IReadOnlyDictionary<string, double> text) => Math.Sqrt(text.Values.Sum(weight => weight * weight));

    private static void Score((float[] Weights, float Share)[] parts, float[] scores)
    {
        Array.Clear(scores);
        foreach (var (weights, share) in parts)
            TermWeights.Add(weights, share, scores);
    }

    private static int Rival(float[] scores, int own)
    {
        var rival = own == 0 ? 1 : 0;
        for (var i = 0; i < scores.Length; i++)
        {
            if (i != own && scores[i] > scores[rival])
                rival = i;
        }

        return rival;
    }

    private static void Move((float[] Weights, float Share)[] parts, int own, int rival, float rate)
    {
        foreach (var (weights, share) in parts)
        {
            weights[own] += rate * share;
            weights[rival] -= rate * share;
        }
    }
}
