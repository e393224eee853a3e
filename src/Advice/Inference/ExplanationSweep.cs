using System.Buffers;

namespace Advice.Inference;

/// <summary>
/// Sweeps the causes in fixed order; the state is the set S of present signs explained so far.
/// forward_0[S] = Π over S leak · Π outside S (1 − leak);
/// forward_i+1 = (1 − p_i) · forward_i + p_i · (forward_i with each linked sign explained with probability q);
/// backward is its transpose from "all signs are explained". Every term is positive, nothing cancels.
/// </summary>
internal static class ExplanationSweep
{
    /// <summary>Below this, intermediate products may have left the range of normal numbers.</summary>
    private const double LeastEvidence = 1e-290;

    /// <summary>Replaces the probabilities by P(cause | signs) and returns P(signs); leaves them alone and returns 0 where that is 0 or below 1e-290.</summary>
    public static double Run(PresentSigns signs, double[] probabilities)
    {
        var size = 1 << signs.Count;
        var causes = signs.CouplingCauses;
        var pooled = ArrayPool<double>.Shared.Rent((causes.Count + 3) * size);
        try
        {
            var forward = pooled.AsSpan(0, (causes.Count + 1) * size);
            var backward = pooled.AsSpan(forward.Length, size);
            var present = pooled.AsSpan(forward.Length + size, size);
            Start(signs, forward[..size]);
            for (var i = 0; i < causes.Count; i++)
                Advance(signs, causes[i], probabilities[causes[i]], forward.Slice(i * size, size), forward.Slice((i + 1) * size, size));

            var evidence = forward[^1];
            if (evidence < LeastEvidence)
                return 0;

            backward.Clear();
            backward[^1] = 1;
            for (var i = causes.Count - 1; i >= 0; i--)
            {
                ref var p = ref probabilities[causes[i]];
                backward.CopyTo(present);
                for (var sign = 0; sign < signs.Count; sign++)
                    if (signs.Strength(sign, causes[i]) is > 0 and var q)
                        SubsetTable.Expect(present, sign, q);
                var posterior = p * SubsetTable.Dot(forward.Slice(i * size, size), present) / evidence;
                SubsetTable.Mix(present, backward, p);
                present.CopyTo(backward);
                p = Math.Min(1, posterior);
            }

            Unfold(signs, forward[..size], backward, evidence, probabilities);
            return evidence;
        }
        finally
        {
            ArrayPool<double>.Shared.Return(pooled);
        }
    }

    private static void Start(PresentSigns signs, Span<double> table)
    {
        table[0] = 1;
        for (var sign = 0; sign < signs.Count; sign++)
        {
            var half = 1 << sign;
            for (var s = 0; s < half; s++)
            {
                table[s + half] = table[s] * signs.Leaks[sign];
                table[s] *= signs.Silences[sign];
            }
        }
    }

    private static void Advance(PresentSigns signs, int cause, double p, ReadOnlySpan<double> before, Span<double> after)
    {
        before.CopyTo(after);
        for (var sign = 0; sign < signs.Count; sign++)
            if (signs.Strength(sign, cause) is > 0 and var q)
                SubsetTable.Explain(after, sign, q);
        SubsetTable.Mix(after, before, p);
    }

    /// <summary>
    /// Posteriors of the causes that were folded into a leak. With a = P(the cause produced its sign | signs)
    /// = p·q · P(signs | the sign is explained) / P(signs), its posterior is a + (1 − a) · p(1 − q)/(1 − p·q).
    /// </summary>
    private static void Unfold(
        PresentSigns signs, ReadOnlySpan<double> start, ReadOnlySpan<double> backward, double evidence, double[] probabilities)
    {
        Span<double> explained = stackalloc double[signs.Count];
        for (var sign = 0; sign < signs.Count; sign++)
            explained[sign] = EvidenceIfExplained(sign, start, backward) / evidence;

        for (var cause = 0; cause < probabilities.Length; cause++)
        {
            ref var p = ref probabilities[cause];
            if (p == 0 || signs.Touched(cause, out var sign) != 1)
                continue;
            var q = signs.Strength(sign, cause);
            var produced = Math.Min(1, p * q * explained[sign]);
            p = p * q < 1 ? produced + (1 - produced) * p * (1 - q) / (1 - p * q) : 1;
        }
    }

    private static double EvidenceIfExplained(int sign, ReadOnlySpan<double> start, ReadOnlySpan<double> backward)
    {
        var bit = 1 << sign;
        var sum = 0.0;
        for (var s = 0; s < start.Length; s++)
            sum += start[s] * backward[s | bit];
        return sum;
    }
}
