using System.Numerics;

namespace Advice.Symptoms.Resemblances;

/// <summary>
/// The weights of one term for meanings. Most terms have one for few meanings alone, and list these; adding what is left out, zeros, would change no score.
/// </summary>
internal sealed class TermWeights
{
    /// <summary>A weight in a list takes as long as about so many in a row, which are added several at a time.</summary>
    private const int InARow = 8;

    private readonly ushort[]? listed;
    private readonly float[] values;

    /// <summary>These weights.</summary>
    /// <param name="listed">Numbers of the meanings that have one.</param>
    /// <param name="values">The weight of each of them.</param>
    /// <param name="meanings">How many meanings there are.</param>
    public TermWeights(ushort[] listed, float[] values, int meanings)
    {
        (this.listed, this.values) = (listed, values);
        if (listed.Length * InARow < meanings)
            return;
        (this.listed, this.values) = (null, new float[meanings]);
        for (var i = 0; i < listed.Length; i++)
            this.values[listed[i]] = values[i];
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
}
