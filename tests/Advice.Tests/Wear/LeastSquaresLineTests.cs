using Advice.Wear;
using CsCheck;
using MathNet.Numerics;

namespace Advice.Tests.Wear;

public class LeastSquaresLineTests
{
    /// <summary>Norris: calibration of ozone monitors, 36 pairs of y and x, from the reference sets of NIST (StRD).</summary>
    private static readonly double[] Norris =
    [
        0.1, 0.2, 338.8, 337.4, 118.1, 118.2, 888.0, 884.6, 9.2, 10.1, 228.1, 226.5, 668.5, 666.3, 998.5, 996.3, 449.1, 448.6, 778.9, 777.0, 559.2, 558.2,
        0.3, 0.4, 0.1, 0.6, 778.1, 775.5, 668.8, 666.9, 339.3, 338.0, 448.9, 447.5, 10.8, 11.6, 557.7, 556.0, 228.3, 228.1, 998.0, 995.8, 888.8, 887.6,
        119.6, 120.2, 0.3, 0.3, 0.6, 0.3, 557.6, 556.8, 339.3, 339.1, 888.0, 887.2, 998.5, 999.0, 778.9, 779.0, 10.2, 11.1, 117.6, 118.3, 228.9, 229.2,
        668.4, 669.1, 449.2, 448.9, 0.2, 0.5,
    ];

    [Fact]
    public void Through_Norris_IsTheCertifiedLine()
    {
        var line = LeastSquaresLine.Through([.. Norris.Chunk(2).Select(pair => (pair[1], pair[0]))]);

        Assert.Equal(36, line.Count);
        Assert.Equal(1.00211681802045, line.Slope, 1e-13);
        Assert.Equal(-0.262323073774029, line.Intercept, 1e-11);
        Assert.Equal(0.884796396144373, line.ResidualDeviation, 1e-12);
    }

    [Fact]
    public void Through_AnyPoints_IsTheLineOfMathNet() =>
        Gen.Select(Gen.Double[0, 300_000], Gen.Double[0, 20]).List[3, 12].Where(points => points.Max(point => point.Item1) - points.Min(point => point.Item1) > 1_000).Sample(points =>
        {
            var line = LeastSquaresLine.Through(points);
            var (intercept, slope) = Fit.Line([.. points.Select(point => point.Item1)], [.. points.Select(point => point.Item2)]);

            Assert.Equal(line.At(0), intercept, 1e-6);
            Assert.Equal(line.At(100_000), intercept + (slope * 100_000), 1e-6);
        });
}
