using Advice.Symptoms.Resemblances;

namespace Advice.Tests.Symptoms;

/// <summary>Weights that are listed, few of many, and weights in a row add the same to the bit.</summary>
public class TermWeightsTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(24)]
    [InlineData(25)]
    [InlineData(200)]
    public void AddTo_SoManyOf200_AddsAsTheRowDoes(int count)
    {
        var row = new float[200];
        for (var i = 0; i < count; i++)
            row[i * 7 % 200] = 0.1f + (i / 3f);
        var meanings = Enumerable.Range(0, row.Length).Where(meaning => row[meaning] != 0).Select(meaning => (ushort)meaning).ToList();
        var (expected, scores) = (new float[200], new float[200]);
        Array.Fill(expected, 0.3f);
        Array.Fill(scores, 0.3f);

        TermWeights.Add(row, 0.7f, expected);
        new TermWeights([.. meanings], [.. meanings.Select(meaning => row[meaning])], row.Length).AddTo(scores, 0.7f);

        Assert.Equal(expected, scores);
        Assert.Equal(count, scores.Count(score => score != 0.3f));
    }
}
