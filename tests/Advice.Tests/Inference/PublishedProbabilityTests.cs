using Advice.Inference;

namespace Advice.Tests.Inference;

/// <summary>Numbers printed elsewhere.</summary>
public class PublishedProbabilityTests
{
    /// <summary>Fever with inhibitors cold 0.6, flu 0.2, malaria 0.1: Russell and Norvig, as on lecture slides of 2020, slide 30.</summary>
    [Theory]
    [InlineData(0, 0, 0, 0.0)]
    [InlineData(0, 0, 1, 0.9)]
    [InlineData(0, 1, 0, 0.8)]
    [InlineData(0, 1, 1, 0.98)]
    [InlineData(1, 0, 0, 0.4)]
    [InlineData(1, 0, 1, 0.94)]
    [InlineData(1, 1, 0, 0.88)]
    [InlineData(1, 1, 1, 0.988)]
    public void Evidence_Fever(double cold, double flu, double malaria, double fever) =>
        AssertProbability(fever, [cold, flu, malaria], 0, [0.4, 0.8, 0.9]);

    /// <summary>Leak 0.1, strengths 0.2 and 0.4: the definition with a leak, after Pearl 1988, p. 184; values computed from it.</summary>
    [Theory]
    [InlineData(0, 0, 0.1)]
    [InlineData(1, 0, 0.28)]
    [InlineData(0, 1, 0.46)]
    [InlineData(1, 1, 0.568)]
    public void Evidence_Leak(double first, double second, double expected) =>
        AssertProbability(expected, [first, second], 0.1, [0.2, 0.4]);

    /// <summary>Strengths 1/6, 1/3 and 7/10: table of a university exercise sheet.</summary>
    [Theory]
    [InlineData(1, 1, 0, 4.0 / 9)]
    [InlineData(1, 0, 1, 3.0 / 4)]
    [InlineData(0, 1, 1, 4.0 / 5)]
    [InlineData(1, 1, 1, 5.0 / 6)]
    public void Evidence_ExerciseFractions(double first, double second, double third, double expected) =>
        AssertProbability(expected, [first, second, third], 0, [1.0 / 6, 1.0 / 3, 7.0 / 10]);

    /// <summary>
    /// Asia network, Lauritzen and Spiegelhalter, JRSS B 50 (1988), posteriors computed from its tables: an abnormal X-ray gives
    /// tuberculosis 0.092411 and lung cancer 0.488711. The X-ray is a noisy OR of the one cause "either disease":
    /// leak 0.05, 1 − 0.95·(1 − q) = 0.98. Both diseases hang on that cause only, and keep their shares of it.
    /// The rest does not fit: dyspnoea (0.1, 0.7, 0.8, both 0.9) would be 0.933 for both by noisy OR,
    /// and bronchitis and lung cancer share the smoker, where our causes are independent.
    /// </summary>
    [Fact]
    public void Solve_AsiaXRay()
    {
        const double tuberculosis = 0.0104, lungCancer = 0.055;
        const double either = 1 - (1 - tuberculosis) * (1 - lungCancer);
        var posterior = ExactInference.Solve(new NoisyOrNetwork(
            [either],
            [new("abnormal X-ray", true, 0.05, [new(0, 1 - 0.02 / 0.95)])]));
        Assert.Equal(0.092411, posterior.Probabilities[0] * tuberculosis / either, 5e-7);
        Assert.Equal(0.488711, posterior.Probabilities[0] * lungCancer / either, 5e-7);
    }

    /// <summary>
    /// Odds form of Bayes' rule: 0.2 with likelihood ratios 6 and 0.5 is 0.428571; 0.01 with 19 is 0.161017 (own arithmetic).
    /// A sign with leak l and strength q has the ratio (1 − (1 − l)(1 − q))/l where present and 1 − q where denied.
    /// </summary>
    [Fact]
    public void Solve_LikelihoodRatios()
    {
        Manifestation six = new("six", true, 0.1, [new(0, 0.5 / 0.9)]);
        Manifestation half = new("half", false, 0.3, [new(0, 0.5)]);
        Manifestation nineteen = new("nineteen", true, 0.05, [new(0, 0.9 / 0.95)]);
        Assert.Equal(3.0 / 7, ExactInference.Solve(new NoisyOrNetwork([0.2], [six, half])).Probabilities[0], 1e-12);
        Assert.Equal(0.161017, ExactInference.Solve(new NoisyOrNetwork([0.01], [nineteen])).Probabilities[0], 5e-7);
    }

    /// <summary>With certain causes the evidence is the probability of the manifestation.</summary>
    private static void AssertProbability(double expected, double[] causes, double leak, double[] strengths)
    {
        CauseLink[] links = [.. strengths.Select((strength, cause) => new CauseLink(cause, strength))];
        Assert.Equal(expected, Evidence(true), 1e-12);
        Assert.Equal(1 - expected, Evidence(false), 1e-12);

        double Evidence(bool present) =>
            Math.Exp(ExactInference.Solve(new NoisyOrNetwork(causes, [new("m", present, leak, links)])).LogEvidence);
    }
}
