using Advice.Inference;
using CsCheck;

namespace Advice.Tests.Inference;

/// <summary>Random networks.</summary>
internal static class Networks
{
    /// <summary>Probabilities with the hard values 0 and 1 and the small ones among them.</summary>
    public static readonly Gen<double> Probability = Gen.Frequency(
        (1, Gen.Const(0.0)),
        (1, Gen.Const(1.0)),
        (3, Gen.Double[-5, 0].Select(exponent => Math.Pow(10, exponent))),
        (10, Gen.Double[0.001, 0.999]));

    /// <summary>Up to 8 causes and 7 manifestations, several links of one cause among them.</summary>
    public static readonly Gen<NoisyOrNetwork> Small =
        Gen.Int[1, 8].SelectMany(causes => Gen.Select(
            Probability.Array[causes],
            Gen.Select(Gen.Bool, Probability, Links(causes)).Array[0, 7],
            (priors, rows) => new NoisyOrNetwork(
                priors,
                [.. rows.Select((row, index) => new Manifestation($"m{index}", row.Item1, row.Item2, row.Item3))])));

    public static Gen<CauseLink[]> Links(int causes) =>
        Gen.Select(Gen.Int[0, causes - 1], Probability, (cause, strength) => new CauseLink(cause, strength)).Array[0, 5];
}
