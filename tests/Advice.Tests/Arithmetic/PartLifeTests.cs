using Advice.Arithmetic.Operators;
using CsCheck;
using MathNet.Numerics.Distributions;

namespace Advice.Tests.Arithmetic;

public class PartLifeTests
{
    /// <summary>NIST/SEMATECH e-Handbook 8.4.1.3: ten failures in hours, ten units censored at 500.</summary>
    private static readonly List<double> NistFailed = [54, 187, 216, 240, 244, 335, 361, 373, 375, 386];
    private static readonly List<double> NistRunning = [.. Enumerable.Repeat(500.0, 10)];

    [Fact]
    public void NistHandbook8413_WeibullWithCensoring()
    {
        var life = Computed.By("part-life", ("failed", NistFailed), ("running", NistRunning), ("age", 300.0), ("further", 100.0));

        Assert.Equal(1.7208, life.Number("shape"), 0.00005);
        Assert.Equal(606.5280, life.Number("scale"), 0.0006);
        Assert.Equal(540.737, life.Number("mean"), 0.0006);
        Assert.Equal(323.806, life.Number("deviation"), 0.0006);
        Assert.Equal(164.02, life.Number("tenthFailsBy"), 0.01);
        Assert.Equal(490.17, life.Number("halfFailsBy"), 0.01);
        Assert.Equal(0.82634, life.Number("survivesFurther"), 0.000006);
        Assert.Equal(0.74246, WeibullLife.Of(NistFailed, NistRunning)!.Surviving(300), 0.000006);
    }

    /// <summary>Also the negative log-likelihood that the handbook prints.</summary>
    [Fact]
    public void NistHandbook8413_IsTheLargestLikelihood()
    {
        var life = WeibullLife.Of(NistFailed, NistRunning)!;

        Assert.Equal(75.135, -LogLikelihood(life), 0.0006);
        foreach (var (shape, scale) in new[] { (1.01, 1.0), (0.99, 1.0), (1.0, 1.01), (1.0, 0.99) })
            Assert.True(LogLikelihood(new WeibullLife(life.Shape * shape, life.Scale * scale)) < LogLikelihood(life));
    }

    /// <summary>The distribution function of MathNet holds to eight digits only: at (1/2)⁴ it gives 0.93941307 for e^(−1/16) = 0.939413063.</summary>
    [Fact]
    public void Moments_AreThoseOfMathNet() => Gen.Select(Gen.Double[0.5, 8], Gen.Double[1, 500_000]).Sample((shape, scale) =>
    {
        var (ours, theirs) = (new WeibullLife(shape, scale), new Weibull(shape, scale));

        Assert.Equal(theirs.Mean, ours.Mean, 1e-6 * scale);
        Assert.Equal(theirs.StdDev, ours.Deviation, 1e-6 * theirs.StdDev);
        Assert.Equal(1 - theirs.CumulativeDistribution(scale / 2), ours.Surviving(scale / 2), 1e-7);
        Assert.Equal(0.1, theirs.CumulativeDistribution(ours.FailedBy(0.1)), 1e-7);
    });

    [Fact]
    public void Of_ManyDrawn_FindsTheShape()
    {
        var random = new Random(3);
        var life = WeibullLife.Of([.. Enumerable.Range(0, 5000).Select(_ => Weibull.Sample(random, 3, 100_000))], [])!;

        Assert.Equal(3, life.Shape, 0.1);
        Assert.Equal(100_000, life.Scale, 2000.0);
    }

    [Fact]
    public void Compute_AllAlike_IsRefused() => Assert.Equal("failed", Computed.By("part-life", ("failed", new List<double> { 5, 5 })).Refused!.Name);

    private static double LogLikelihood(WeibullLife life)
    {
        var weibull = new Weibull(life.Shape, life.Scale);
        return NistFailed.Sum(weibull.DensityLn) + NistRunning.Sum(age => Math.Log(1 - weibull.CumulativeDistribution(age)));
    }
}
