using System.Numerics;

namespace Advice.Symptoms;

/// <summary>
/// The weights of one term for meanings. Most terms have one for few meanings alone, and list these; adding what is left out, zeros, would change no score.
/// </summary>
internal sealed class TermWeights
{
    /// <summary>A weight in a list takes as long as about so many in a row, which are added several at a time.</summary>
    private const int InARow = 8;

    private readonly ushort[]? listed;
    private readonly float[] values;

    private TermWeights(ushort[] listed, float[] values, int meanings)
    {
        (this.listed, this.values) = (listed, values);
        if (listed.Length * InARow < meanings)
            return;
        (this.listed, this.values) = (null, new float[meanings]);
        for (var i = 0; i < listed.Length; i++)
            this.values[listed[i]] = values[i];
    }

    /// <summary>These weights, by number of the meaning.</summary>
    public static TermWeights Of(float[] row)
    {
        ushort[] listed = [.. Listed(row)];
        return new(listed, [.. listed.Select(meaning => row[meaning])], row.Length);
    }

    /// <summary>What <see cref="Write"/> wrote.</summary>
    public static TermWeights Read(BinaryReader bytes, int meanings)
    {
        var (listed, values) = (new ushort[bytes.ReadUInt16()], new float[meanings]);
        for (var i = 0; i < listed.Length; i++)
            (listed[i], values[i]) = (bytes.ReadUInt16(), bytes.ReadSingle());
        return new(listed, values[..listed.Length], meanings);
    }

    /// <summary>Adds a row of weights times a share to the scores.</summary>
    public static void Add(float[] row, float share, float[] scores)
    {
        var i = 0;
        for (; i <= scores.Length - Vector<float>.Count; i += Vector<float>.Count)
            (new Vector<float>(scores, i) + (new Vector<float>(row, i) * share)).CopyTo(scores, i);
        for (; i < scores.Length; i++)
            scores[i] += row[i] * share;
    }

    /// <summary>Adds the weights times a share to the scores.</summary>
    public void AddTo(float[] scores, float share)
    {
        if (listed is null)
        {
            Add(values, share, scores);
            return;
        }

        for (var i = 0; i < listed.Length; i++)
            scores[listed[i]] += values[i] * share;
    }

    /// <summary>Writes the weights, to the bit.</summary>
    public void Write(BinaryWriter bytes)
    {
        var meanings = listed ?? [.. Listed(values)];
        bytes.Write((ushort)meanings.Length);
        for (var i = 0; i < meanings.Length; i++)
        {
            bytes.Write(meanings[i]);
            bytes.Write(listed is null ? values[meanings[i]] : values[i]);
        }
    }

    private static IEnumerable<ushort> Listed(float[] row) => Enumerable.Range(0, row.Length).Where(meaning => row[meaning] != 0).Select(meaning => checked((ushort)meaning));
}
