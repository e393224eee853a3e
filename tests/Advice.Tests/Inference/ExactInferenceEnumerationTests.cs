using Advice.Inference;
using CsCheck;

namespace Advice.Tests.Inference;

public class ExactInferenceEnumerationTests
{
    [Fact]
    public void Solve_RandomSmallNetwork_EqualsEnumeration() =>
        Networks.Small.Sample(
            network =>
            {
                var (expected, evidence) = Enumeration.Solve(network);
                var actual = ExactInference.Solve(network);
                if (evidence == 0)
                {
                    Assert.Equal(double.NegativeInfinity, actual.LogEvidence);
                    Assert.Equal(network.Priors, actual.Probabilities);
                    return;
                }

                Assert.InRange(Math.Exp(actual.LogEvidence) / evidence, 1 - 1e-9, 1 + 1e-9);
                Assert.All(expected.Zip(actual.Probabilities), pair => Assert.InRange(pair.Second, pair.First - 1e-9, pair.First + 1e-9));
            },
            iter: 5_000);
}
