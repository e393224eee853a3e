using Advice.Symptoms.Resemblances;
using CsCheck;

namespace Advice.Tests.Symptoms;

/// <summary>The rule PA-I for several classes: Crammer, Dekel, Keshet, Shalev-Shwartz and Singer, "Online Passive-Aggressive Algorithms", JMLR 7, 2006.</summary>
public class LinearClassifierTests
{
    private static readonly Gen<(int Meaning, IReadOnlyDictionary<string, double> Terms)[]> Examples =
        Gen.Select(Gen.Int[0, 3], Gen.Char['a', 'h'].Array[1, 4]).Select((meaning, terms) => (meaning, (IReadOnlyDictionary<string, double>)Terms(terms))).Array[1, 30];

    /// <summary>Two terms have the shares √½; the loss is 1, so that the step is 1 / 2, and then the margin of 1 is reached.</summary>
    [Fact]
    public void Scores_OneExample_AreThoseOfTheFormula()
    {
        var scores = new LinearClassifier(2, [(0, Terms("ab"))]).Scores(Terms("a"));

        Assert.Equal(0.5 * Math.Sqrt(0.5), scores[0], 1e-6);
        Assert.Equal(-0.5 * Math.Sqrt(0.5), scores[1], 1e-6);
    }

    /// <summary>
    /// Two examples that contradict each other: the losses are 1, 2, 1, 2, 1, 2 and every step is cut to C = 0.5, so that the weight is 0.5, 0, 0.5, 0, 0.5, 0 after the
    /// six steps and 0.25 on average; the last one alone would be 0.
    /// </summary>
    [Fact]
    public void Scores_Contradiction_AreTheAverageOverTheSteps()
    {
        var scores = new LinearClassifier(2, [(0, Terms("a")), (1, Terms("a"))]).Scores(Terms("a"));

        Assert.Equal(0.25, scores[0], 1e-6);
        Assert.Equal(-0.25, scores[1], 1e-6);
    }

    /// <summary>The second example, {a, b}, has learned against a from the first; b is what tells it apart.</summary>
    [Fact]
    public void Scores_TermOfOneMeaningOnly_SpeaksForIt()
    {
        var scores = new LinearClassifier(2, [(0, Terms("a")), (1, Terms("ab"))]).Scores(Terms("b"));

        Assert.True(scores[1] > 0 && scores[0] < 0);
    }

    [Fact]
    public void Scores_NothingKnown_AreZero() => Assert.Equal([0f, 0f], new LinearClassifier(2, [(0, Terms("a"))]).Scores(Terms("z")));

    [Fact]
    public void Scores_OneMeaning_AreZero() => Assert.Equal([0f], new LinearClassifier(1, [(0, Terms("a"))]).Scores(Terms("a")));

    [Fact]
    public void Scores_TermsOfTheirOwn_AreHighestForTheirMeaning()
    {
        var classifier = new LinearClassifier(3, [(0, Terms("ax")), (1, Terms("bx")), (2, Terms("cx"))]);

        Assert.All(new[] { (0, "a"), (1, "b"), (2, "c") }, one => Assert.Equal(one.Item1, Highest(classifier.Scores(Terms(one.Item2)))));
    }

    /// <summary>What speaks for one meaning speaks as much against others: each step moves two meanings by the same amount.</summary>
    [Fact]
    public void Scores_OfAllMeanings_AddUpToNothing() => Examples.Sample(examples =>
        Assert.InRange(new LinearClassifier(4, examples).Scores(Terms("abcdefgh")).Sum(), -1e-4, 1e-4));

    /// <summary>With 4 meanings terms have a row of weights, with 400 a list: neither changes a bit.</summary>
    [Theory]
    [InlineData(4)]
    [InlineData(400)]
    public void Scores_WrittenAndRead_AreTheSameToTheBit(int meanings) => Examples.Sample(examples =>
    {
        var learned = new LinearClassifier(meanings, examples);
        using var content = new MemoryStream();
        learned.Write(new BinaryWriter(content));
        content.Position = 0;
        var read = new LinearClassifier(new BinaryReader(content));

        return content.Position == content.Length && learned.Scores(Terms("abcdefgh")).SequenceEqual(read.Scores(Terms("abcdefgh")));
    });

    private static int Highest(float[] scores) => Array.IndexOf(scores, scores.Max());

    private static Dictionary<string, double> Terms(IEnumerable<char> letters) => letters.Distinct().ToDictionary(letter => letter.ToString(), _ => 1.0);
}
