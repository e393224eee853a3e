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

    /// <summary>
    /// Replaces the probabilities by P(cause | signs) and returns P(signs);
    /// leaves them alone and returns 0 where that is below 1e-290.
    /// </summary>
    public static double Run(PresentSigns signs, double[] probabilities)
    {
        var size = 1 << signs.Count;
        var causes = signs.CouplingCauses;
        var pooled = ArrayPool<double>.Shared.Rent((causes.Count + 3) * size);
        try
        {
            var forward = pooled.AsSpan(0, (causes.Count + 1) * size);
            Forward(signs, probabilities, forward);
            var evidence = forward[^1];
            if (evidence < LeastEvidence)
                return 0;

            var start = forward[..size];
            var backward = pooled.AsSpan(forward.Length, size);
            Backward(signs, probabilities, forward, backward, pooled.AsSpan(forward.Length + size, size));
            Unfold(signs, start, backward, evidence, probabilities);
            return evidence;
        }
        finally
        {
            ArrayPool<double>.Shared.Return(pooled);
        }
    }

    /// <summary>Fills one table for each coupling cause with what was explained before it, and one behind the last.</summary>
    private static void Forward(PresentSigns signs, double[] probabilities, Span<double> tables)
    {
        var size = 1 << signs.Count;
        Start(signs, tables[..size]);
        foreach (var cause in signs.CouplingCauses)
        {
            var before = tables[..size];
            var after = tables.Slice(size, size);
            before.CopyTo(after);
            for (var sign = 0; sign < signs.Count; sign++)
                if (signs.Strength(sign, cause) is > 0 and var q)
                    SubsetTable.Explain(after, sign, q);
            SubsetTable.Mix(after, probabilities[cause], before, after);
            tables = tables[size..];
        }
    }

    /// <summary>Goes back through the coupling causes, and gives each its posterior on the way.</summary>
    private static void Backward(
        PresentSigns signs, double[] probabilities, ReadOnlySpan<double> forward, Span<double> backward, Span<double> present)
    {
        var size = backward.Length;
        var evidence = forward[^1];
        backward.Clear();
        backward[^1] = 1;
        for (var i = signs.CouplingCauses.Count - 1; i >= 0; i--)
        {
            var cause = signs.CouplingCauses[i];
            var prior = probabilities[cause];
            backward.CopyTo(present);
            for (var sign = 0; sign < signs.Count; sign++)
                if (signs.Strength(sign, cause) is > 0 and var q)
                    SubsetTable.Expect(present, sign, q);
            probabilities[cause] = Math.Min(1, prior * SubsetTable.Dot(forward.Slice(i * size, size), present) / evidence);
            SubsetTable.Mix(backward, prior, backward, present);
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
                table[s] *= 1 - signs.Leaks[sign];
            }
        }
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
