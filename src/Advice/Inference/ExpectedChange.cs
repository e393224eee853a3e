namespace Advice.Inference;

/// <summary>
/// What asking for one unreported manifestation is worth: how far its answer is expected to move the causes.
/// Takes the causes as independent at their present probabilities, which they are not once present manifestations couple
/// them: an approximation that spares one inference for each answer to each question.
/// </summary>
public static class ExpectedChange
{
    /// <summary>
    /// Σ harm · E|ΔP| over the answers yes and no. A probability stays the same on average, so that both answers move it
    /// by the same expected amount: E|ΔP| = 2 · P(no) · p·q·(1 − p)/(1 − p·q).
    /// </summary>
    /// <param name="probabilities">P of each cause now, 0 … 1.</param>
    /// <param name="harms">Harm of each cause, in any unit that is the same for all; the result has that unit.</param>
    /// <param name="leak">Probability of yes where no linked cause produces it, 0 … 1.</param>
    /// <param name="links">Causes that produce it; of several links of one cause the largest strength counts.</param>
    public static double Worth(
        IReadOnlyList<double> probabilities, IReadOnlyList<double> harms, double leak, IReadOnlyList<CauseLink> links)
    {
        var sign = new MergedSign("", leak, MergedSign.StrongestByCause(links));
        var sum = 0.0;
        foreach (var (cause, q) in sign.Links)
        {
            var p = probabilities[cause];
            if (p is > 0 and < 1)
                sum += harms[cause] * p * q * (1 - p) / (1 - p * q);
        }

        return 2 * (1 - sign.PriorProbability(probabilities)) * sum;
    }

    /// <summary>P(yes) = 1 − (1 − leak) · Π (1 − p·q), with the causes taken as independent.</summary>
    /// <param name="probabilities">P of each cause now, 0 … 1.</param>
    /// <param name="leak">Probability of yes where no linked cause produces it, 0 … 1.</param>
    /// <param name="links">Causes that produce it; of several links of one cause the largest strength counts.</param>
    public static double ProbabilityOfYes(IReadOnlyList<double> probabilities, double leak, IReadOnlyList<CauseLink> links) =>
        new MergedSign("", leak, MergedSign.StrongestByCause(links)).PriorProbability(probabilities);
}
