using Advice.Symptoms;
using CsCheck;

namespace Advice.Tests.Symptoms;

/// <summary>The rule PA-I for several classes: Crammer, Dekel, Keshet, Shalev-Shwartz and Singer, "Online Passive-Aggressive Algorithms", JMLR 7, 2006.</summary>
public class LinearClassifierTests
{
    private static readonly Gen<(int Meaning, IReadOnlyDictionary<string, double> Terms)[]> Examples =
        Gen.Select(Gen.Int[0, 3], Gen.Char['a', 'h'].Array[1, 4]).Select((meaning, terms) => (meaning, (IReadOnlyDictionary<string, double>)Terms(terms))).Array[1, 30];

    /// <summary>
    /// One example with one term and two meanings: the loss is 1 and the squared length 1, so that the step is min(C, 1 / 2) = 0.5 for the own meaning and
    /// against the other; then the margin of 1 is reached and nothing moves any more, so that the average is the same.
    /// </summary>
    [Fact]
    public void Scores_OneExample_AreThoseOfTheFormula() => Assert.Equal([0.5f, -0.5f], new LinearClassifier(2, [(0, Terms("a"))]).Scores(Terms("a")));

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

    [Fact]
    public void Scores_SameExamples_SameWeights() => Examples.Sample(examples =>
        Assert.Equal(new LinearClassifier(4, examples).Scores(Terms("abcdefgh")), new LinearClassifier(4, examples).Scores(Terms("abcdefgh"))));

    /// <summary>What speaks for one meaning speaks as much against others: each step moves two meanings by the same amount.</summary>
    [Fact]
    public void Scores_OfAllMeanings_AddUpToNothing() => Examples.Sample(examples =>
        Assert.InRange(new LinearClassifier(4, examples).Scores(Terms("abcdefgh")).Sum(), -1e-4, 1e-4));

    private static int Highest(float[] scores) => Array.IndexOf(scores, scores.Max());

    private static Dictionary<string, double> Terms(IEnumerable<char> letters) => letters.Distinct().ToDictionary(letter => letter.ToString(), _ => 1.0);
}
