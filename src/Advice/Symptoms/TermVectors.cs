using System.Buffers;

namespace Advice.Symptoms;

/// <summary>
/// How near a text is to each meaning of some documents: the cosine of their terms, weighed by rarity (tf-idf), of the nearest document of each
/// meaning. The work for a text is that of the lists of its terms and one pass over the documents, whatever the text.
/// </summary>
internal sealed class TermVectors
{
    private readonly Dictionary<string, Entry> byTerm;
    private readonly (int Meaning, int End)[] blocks;
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
        var lists = rarity.Keys.ToDictionary(t => t, _ => new List<(int, float)>(), StringComparer.Ordinal);
        for (var i = 0; i < documents.Count; i++)
        {
            var length = Math.Sqrt(documents[i].Terms.Sum(t => Math.Pow(t.Value * rarity[t.Key], 2)));
            foreach (var (term, weight) in documents[i].Terms)
            {
                if (length > 0 && rarity[term] > 0)
                    lists[term].Add((i, (float)(weight * rarity[term] / length)));
            }
        }

        byTerm = lists.ToDictionary(p => p.Key, p => new Entry(rarity[p.Key], [.. p.Value]), StringComparer.Ordinal);
        blocks = [.. documents.Select((d, i) => (d.Meaning, End: i + 1)).GroupBy(d => d.Meaning).Select(g => (g.Key, g.Max(d => d.End)))];
    }

    /// <summary>What <see cref="Write"/> wrote.</summary>
    public TermVectors(BinaryReader bytes)
    {
        documents = bytes.Read7BitEncodedInt();
        unknown = Unknown(documents);
        blocks = new (int, int)[bytes.Read7BitEncodedInt()];
        for (var i = 0; i < blocks.Length; i++)
            blocks[i] = (bytes.Read7BitEncodedInt(), bytes.Read7BitEncodedInt());
        var terms = bytes.Read7BitEncodedInt();
        byTerm = new(terms, StringComparer.Ordinal);
        for (var i = 0; i < terms; i++)
        {
            var (term, rarity, parts) = (bytes.ReadString(), bytes.ReadDouble(), new (int, float)[bytes.Read7BitEncodedInt()]);
            for (var j = 0; j < parts.Length; j++)
                parts[j] = (bytes.Read7BitEncodedInt(), bytes.ReadSingle());
            byTerm.Add(term, new(rarity, parts));
        }
    }

    /// <summary>Whether a document has a term.</summary>
    /// <param name="document">Its number in their order.</param>
    /// <param name="term">The term.</param>
    public bool Has(int document, string term) =>
        byTerm.TryGetValue(term, out var entry) && (entry.IsEverywhere || Array.Exists(entry.Parts, part => part.Document == document));

    /// <summary>Writes the vectors, to the bit.</summary>
    public void Write(BinaryWriter bytes)
    {
        bytes.Write7BitEncodedInt(documents);
        bytes.Write7BitEncodedInt(blocks.Length);
        foreach (var (meaning, end) in blocks)
        {
            bytes.Write7BitEncodedInt(meaning);
            bytes.Write7BitEncodedInt(end);
        }

        bytes.Write7BitEncodedInt(byTerm.Count);
        foreach (var (term, entry) in byTerm)
        {
            bytes.Write(term);
            bytes.Write(entry.Rarity);
            bytes.Write7BitEncodedInt(entry.Parts.Length);
            foreach (var (document, part) in entry.Parts)
            {
                bytes.Write7BitEncodedInt(document);
                bytes.Write(part);
            }
        }
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
            var entry = byTerm.GetValueOrDefault(term);
            var own = weight * (entry?.Rarity ?? unknown);
            squares += own * own;
            foreach (var (document, part) in entry?.Parts ?? [])
                near[document] += (float)(own * part);
        }

        var start = 0;
        foreach (var (meaning, end) in blocks)
        {
            var best = 0f;
            foreach (var one in near.AsSpan(start, end - start))
                best = Math.Max(best, one);
            if (best > 0)
                scores[meaning] += share * best / Math.Sqrt(squares);
            start = end;
        }

        ArrayPool<float>.Shared.Return(near);
    }

    private static double Unknown(int documents) => Math.Log(Math.Max(2, documents));

    private sealed record Entry(double Rarity, (int Document, float Part)[] Parts)
    {
        /// <summary>What all documents have tells none from another, and no document lists it.</summary>
        public bool IsEverywhere => Rarity == 0;
    }
}
