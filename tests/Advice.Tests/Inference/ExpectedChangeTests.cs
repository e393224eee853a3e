using Advice.Inference;
using CsCheck;

namespace Advice.Tests.Inference;

public class ExpectedChangeTests
{
    private static readonly Gen<(double[] Priors, double[] Harms, double Leak, CauseLink[] Links)> Questions =
        Gen.Int[1, 6].SelectMany(causes => Gen.Select(
            Networks.Probability.Array[causes], Gen.Double[0.01, 9.99].Array[causes], Networks.Open, Networks.Links(causes, Networks.Probability)));

    [Fact]
    public void Worth_RandomQuestion_EqualsItsDefinition() =>
        Questions.Sample(
            (priors, harms, leak, links) =>
            {
                var yes = ExactInference.Solve(new NoisyOrNetwork(priors, [new("m", true, leak, links)]));
                var no = ExactInference.Solve(new NoisyOrNetwork(priors, [new("m", false, leak, links)]));
                var expected = priors.Select((prior, cause) => harms[cause] * (Change(yes, cause) + Change(no, cause))).Sum();
                Assert.Equal(expected, ExpectedChange.Worth(priors, harms, leak, links), 1e-9);
                Assert.Equal(Math.Exp(yes.LogEvidence), ExpectedChange.ProbabilityOfYes(priors, leak, links), 1e-9);

                double Change(Posterior answer, int cause) =>
                    Math.Exp(answer.LogEvidence) * Math.Abs(answer.Probabilities[cause] - priors[cause]);
            },
            iter: 3_000);

    [Fact]
    public void Worth_NothingLinked_IsNothing() => Assert.Equal(0, ExpectedChange.Worth([0.5], [1], 0.1, []));

    [Fact]
    public void Worth_CertainSign_IsTwiceTheVarianceTimesHarm() =>
        // Strength 1 and no leak: yes moves 0.2 to 1, no moves it to 0: 0.2·0.8 + 0.8·0.2.
        Assert.Equal(10 * 0.32, ExpectedChange.Worth([0.2], [10], 0, [new(0, 1)]), 1e-12);
}
