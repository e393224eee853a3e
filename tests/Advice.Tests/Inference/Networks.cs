using Advice.Inference;
using CsCheck;

namespace Advice.Tests.Inference;

/// <summary>Random networks.</summary>
internal static class Networks
{
    // Bounds that are not whole: CsCheck draws mostly 0 and tiny numbers from whole ones.

    /// <summary>Probabilities with the hard values 0 and 1 and the small ones among them.</summary>
    public static readonly Gen<double> Probability = Gen.Frequency(
        (1, Gen.Const(0.0)),
        (1, Gen.Const(1.0)),
        (3, Gen.Double[-4.99, -0.01].Select(exponent => Math.Pow(10, exponent))),
        (10, Gen.Double[0.001, 0.999]));

    /// <summary>Probabilities that make nothing certain.</summary>
    public static readonly Gen<double> Open = Gen.Double[0.01, 0.95];

    /// <summary>Up to 8 causes and 7 manifestations, several links of one cause among them.</summary>
    public static readonly Gen<NoisyOrNetwork> Small = Of(Probability);

    /// <summary>The same with nothing impossible or certain.</summary>
    public static readonly Gen<NoisyOrNetwork> Uncertain = Of(Open);

    public static Gen<CauseLink[]> Links(int causes, Gen<double> strength) =>
        Gen.Select(Gen.Int[0, causes - 1], strength, (cause, q) => new CauseLink(cause, q)).Array[0, 5];

    private static Gen<NoisyOrNetwork> Of(Gen<double> probability) =>
        Gen.Int[1, 8].SelectMany(causes => Gen.Select(
            probability.Array[causes],
            Gen.Select(Gen.Bool, probability, Links(causes, probability)).Array[0, 7],
            (priors, rows) => new NoisyOrNetwork(
                priors,
                [.. rows.Select((row, index) => new Manifestation($"m{index}", row.Item1, row.Item2, row.Item3))])));
}
