using System.Numerics;
using Advice.Inference;

namespace Advice.Tests.Inference;

/// <summary>
/// Posteriors by inclusion–exclusion over the present manifestations, the textbook form of Heckerman 1989:
/// P(all present) = Σ over subsets (−1)^|S| · P(S absent). Shares no step with the sweep; needs many digits.
/// </summary>
internal static class AlternatingSum
{
    /// <summary>P(cause and manifestations) of each cause, and P(manifestations); one link of each cause at most.</summary>
    public static (T[] Joint, T Evidence) Solve<T>(NoisyOrNetwork network, Func<double, T> from)
        where T : struct, IAdditionOperators<T, T, T>, ISubtractionOperators<T, T, T>, IMultiplyOperators<T, T, T>
    {
        var one = from(1);
        var causes = network.Priors.Count;
        var priors = network.Priors.Select(from).ToArray();
        var absent = network.Manifestations.Where(manifestation => !manifestation.Present).ToArray();
        var present = network.Manifestations.Where(manifestation => manifestation.Present).ToArray();
        var joint = new T[causes];
        var evidence = default(T);
        for (var subset = 0; subset < 1 << present.Length; subset++)
        {
            var silent = Enumerable.Repeat(one, causes).ToArray();
            var term = one;
            foreach (var manifestation in absent.Concat(present.Where((_, index) => (subset >> index & 1) == 1)))
            {
                term *= one - from(manifestation.Leak);
                foreach (var (cause, strength) in manifestation.Links)
                    silent[cause] *= one - from(strength);
            }

            // before[i] and after[i]: product over the causes before and after i, whether present or not.
            var before = new T[causes + 1];
            var after = new T[causes + 1];
            before[0] = term;
            after[causes] = one;
            for (var i = 0; i < causes; i++)
                before[i + 1] = before[i] * (one - priors[i] + priors[i] * silent[i]);
            for (var i = causes - 1; i >= 0; i--)
                after[i] = after[i + 1] * (one - priors[i] + priors[i] * silent[i]);

            var adds = BitOperations.PopCount((uint)subset) % 2 == 0;
            evidence = adds ? evidence + before[causes] : evidence - before[causes];
            for (var i = 0; i < causes; i++)
            {
                var part = before[i] * priors[i] * silent[i] * after[i + 1];
                joint[i] = adds ? joint[i] + part : joint[i] - part;
            }
        }

        return (joint, evidence);
    }
}
