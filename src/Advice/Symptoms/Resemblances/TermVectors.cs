using System.Buffers;
using Advice.Symptoms.Snapshots;

namespace Advice.Symptoms.Resemblances;

/// <summary>
/// How near a text is to each meaning of some documents: the cosine of their terms, weighed by rarity (tf-idf), of the nearest document of each
/// meaning. The work for a text is that of the lists of its terms and one pass over the documents, whatever the text.
/// </summary>
internal sealed class TermVectors
{
    private readonly TextTable terms;
    private readonly Written<double> rarities;

    /// <summary>For each term the documents that have it, and its share in each.</summary>
    private readonly WrittenLists<int> holding;
    private readonly WrittenLists<float> parts;

    /// <summary>For each block of documents the meaning and the number after its last.</summary>
    private readonly Written<int> blocks;
    private readonly int documents;
    private readonly double unknown;

    /// <summary>Vectors of these documents.</summary>
    /// <param name="documents">Their meaning, a number, and their terms with weights, each term once; those of one meaning stand together.</param>
    public TermVectors(IReadOnlyList<(int Meaning, IReadOnlyDictionary<string, double> Terms)> documents)
    {
        this.documents = documents.Count;
        unknown = Unknown(documents.Count);
        var rarity = documents.SelectMany(d => d.Terms.Keys).GroupBy(t => t, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => Math.Log((double)documents.Count / g.Count()), StringComparer.Ordinal);
        var lists = rarity.Keys.ToDictionary(t => t, _ => new List<(int Document, float Part)>(), StringComparer.Ordinal);
        for (var i = 0; i < documents.Count; i++)
        {
            var length = Math.Sqrt(documents[i].Terms.Sum(t => Math.Pow(t.Value * rarity[t.Key], 2)));
            foreach (var (term, weight) in documents[i].Terms)
            {
                if (length > 0 && rarity[term] > 0)
                    lists[term].Add((i, (float)(weight * rarity[term] / length)));
            }
        }

        terms = new([.. rarity.Keys]);
        rarities = new([.. rarity.Values]);
        holding = new([.. lists.Values.Select(list => list.ConvertAll(one => one.Document))]);
        parts = new([.. lists.Values.Select(list => list.ConvertAll(one => one.Part))]);
        blocks = new([.. documents.Select((d, i) => (d.Meaning, End: i + 1)).GroupBy(d => d.Meaning).SelectMany(g => new[] { g.Key, g.Max(d => d.End) })]);
    }

    /// <summary>What <see cref="Write"/> wrote.</summary>
    public TermVectors(BinaryReader bytes)
    {
        documents = bytes.Read7BitEncodedInt();
        unknown = Unknown(documents);
        (blocks, terms, rarities) = (Written<int>.ReadFrom(bytes), new(bytes), Written<double>.ReadFrom(bytes));
        (holding, parts) = (new(bytes), new(bytes));
    }

    /// <summary>Whether a document has a term.</summary>
    /// <param name="document">Its number in their order.</param>
    /// <param name="term">The term.</param>
    public bool Has(int document, string term) =>
        terms.Number(term) is var number and >= 0 && (rarities[number] == 0 || holding[number].Contains(document));

    /// <summary>Writes the vectors, to the bit.</summary>
    public void Write(BinaryWriter bytes)
    {
        bytes.Write7BitEncodedInt(documents);
        blocks.WriteTo(bytes);
        terms.Write(bytes);
        rarities.WriteTo(bytes);
        holding.WriteTo(bytes);
        parts.WriteTo(bytes);
    }

    /// <summary>Adds to the score of each meaning how near the text is to it, 0 … 1, times a share.</summary>
    /// <param name="text">Its terms with weights.</param>
    /// <param name="share">What to multiply with.</param>
    /// <param name="scores">The scores, by number of the meaning.</param>
    public void AddTo(double[] scores, IReadOnlyDictionary<string, double> text, double share)
    {
        var near = ArrayPool<float>.Shared.Rent(documents);
        Array.Clear(near, 0, documents);
        var squares = 0.0;
        foreach (var (term, weight) in text)
        {
            var number = terms.Number(term);
            var own = weight * (number < 0 ? unknown : rarities[number]);
            squares += own * own;
            if (number < 0)
                continue;
            var those = holding[number];
            var shares = parts[number];
            for (var i = 0; i < those.Length; i++)
                near[those[i]] += (float)(own * shares[i]);
        }

        var start = 0;
        for (var i = 0; i < blocks.Length; i += 2)
        {
            var end = blocks[i + 1];
            var best = 0f;
            foreach (var one in near.AsSpan(start, end - start))
                best = Math.Max(best, one);
            if (best > 0)
                scores[blocks[i]] += share * best / Math.Sqrt(squares);
            start = end;
        }

        ArrayPool<float>.Shared.Return(near);
    }

    private static double Unknown(int documents) => Math.Log(Math.Max(2, documents));
}
