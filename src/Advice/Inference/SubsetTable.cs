using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Advice.Inference;

/// <summary>
/// One number for each subset of the present signs; bit m of the index says whether sign m is explained.
/// Vectors have four numbers on every machine, so that sums are taken in one order and the bits of the answer are the same.
/// </summary>
internal static class SubsetTable
{
    /// <summary>Forward: with probability q the set S becomes S ∪ {m}.</summary>
    public static void Explain(Span<double> table, int sign, double q)
    {
        var half = 1 << sign;
        var silent = 1 - q;
        for (var start = 0; start < table.Length; start += 2 * half)
        {
            var without = table.Slice(start, half);
            var with = table.Slice(start + half, half);
            var withoutVectors = MemoryMarshal.Cast<double, Vector256<double>>(without);
            var withVectors = MemoryMarshal.Cast<double, Vector256<double>>(with);
            for (var s = 0; s < withoutVectors.Length && s < withVectors.Length; s++)
            {
                withVectors[s] += q * withoutVectors[s];
                withoutVectors[s] *= silent;
            }

            for (var s = 4 * withoutVectors.Length; s < half; s++)
            {
                with[s] += q * without[s];
                without[s] *= silent;
            }
        }
    }

    /// <summary>Backward, the transpose of <see cref="Explain"/>: what S is worth if it becomes S ∪ {m} with probability q.</summary>
    public static void Expect(Span<double> table, int sign, double q)
    {
        var half = 1 << sign;
        var silent = 1 - q;
        for (var start = 0; start < table.Length; start += 2 * half)
        {
            var without = table.Slice(start, half);
            var with = table.Slice(start + half, half);
            var withoutVectors = MemoryMarshal.Cast<double, Vector256<double>>(without);
            var withVectors = MemoryMarshal.Cast<double, Vector256<double>>(with);
            for (var s = 0; s < withoutVectors.Length && s < withVectors.Length; s++)
                withoutVectors[s] = silent * withoutVectors[s] + q * withVectors[s];
            for (var s = 4 * withoutVectors.Length; s < half; s++)
                without[s] = silent * without[s] + q * with[s];
        }
    }

    /// <summary>target = (1 − p) · absent + p · present; the target may be one of both.</summary>
    public static void Mix(Span<double> target, double p, ReadOnlySpan<double> absent, ReadOnlySpan<double> present)
    {
        var targetVectors = MemoryMarshal.Cast<double, Vector256<double>>(target);
        var absentVectors = MemoryMarshal.Cast<double, Vector256<double>>(absent);
        var presentVectors = MemoryMarshal.Cast<double, Vector256<double>>(present);
        for (var s = 0; s < targetVectors.Length && s < absentVectors.Length && s < presentVectors.Length; s++)
            targetVectors[s] = (1 - p) * absentVectors[s] + p * presentVectors[s];
        for (var s = 4 * targetVectors.Length; s < target.Length; s++)
            target[s] = (1 - p) * absent[s] + p * present[s];
    }

    /// <summary>Σ over S of a[S] · b[S].</summary>
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var aVectors = MemoryMarshal.Cast<double, Vector256<double>>(a);
        var bVectors = MemoryMarshal.Cast<double, Vector256<double>>(b);
        var sums = Vector256<double>.Zero;
        for (var s = 0; s < aVectors.Length && s < bVectors.Length; s++)
            sums += aVectors[s] * bVectors[s];
        var sum = Vector256.Sum(sums);
        for (var s = 4 * aVectors.Length; s < a.Length; s++)
            sum += a[s] * b[s];
        return sum;
    }
}
