namespace Advice.Inference;

/// <summary>
/// Folds the absent signs into the priors. Given its causes an absent sign is a product over them, so that it keeps
/// independent causes independent and multiplies the odds of each by 1 − q.
/// </summary>
internal static class Denials
{
    /// <summary>Replaces the priors by P(cause | denials) and returns ln P(denials), −∞ where they cannot happen.</summary>
    public static double Fold(IEnumerable<MergedSign> absent, double[] priors)
    {
        var silent = new double[priors.Length];
        Array.Fill(silent, 1);
        var logEvidence = 0.0;
        foreach (var sign in absent)
        {
            logEvidence += Math.Log(1 - sign.Leak);
            foreach (var link in sign.Links)
                silent[link.Cause] *= 1 - link.Strength;
        }

        for (var cause = 0; cause < priors.Length; cause++)
        {
            if (silent[cause] == 1)
                continue;
            var present = priors[cause] * silent[cause];
            var either = 1 - priors[cause] + present;
            logEvidence += Math.Log(either);
            priors[cause] = present / either;
        }

        return logEvidence;
    }
}
