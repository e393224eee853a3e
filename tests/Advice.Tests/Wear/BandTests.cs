using Advice.Wear;
using CsCheck;
using MathNet.Numerics.Distributions;

namespace Advice.Tests.Wear;

public class BandTests
{
    private static readonly Gen<List<(double X, double Y)>> Points =
        Gen.Select(Gen.Int[0, 100_000], Gen.Int[-100, 100]).List[3, 8]
            .Select(list => list.Select(point => ((double)point.Item1, 12 - (point.Item1 * 8e-5) + (point.Item2 * 0.005))).ToList())
            .Where(points => points.Select(point => point.Item1).Distinct().Count() > 2);

    /// <summary>Table of Student's t at 0.95, NIST/SEMATECH e-Handbook 1.3.6.7.2 (from memory).</summary>
    [Theory]
    [InlineData(1, 6.314)]
    [InlineData(2, 2.920)]
    [InlineData(3, 2.353)]
    [InlineData(4, 2.132)]
    [InlineData(10, 1.812)]
    [InlineData(30, 1.697)]
    public void Quantile_OfStudent(int freedom, double t) => Assert.Equal(t, StudentT.InvCDF(0, 1, freedom, 0.95), 0.0006);

    /// <summary>At both ends of the inverted band its edge is the limit.</summary>
    [Fact]
    public void Where_EndsLieOnTheEdges() => Points.Sample(points =>
    {
        var band = Band.OfPrediction(LeastSquaresLine.Through(points));
        if (band.Where(2) is not var (first, last))
            return;
        Assert.True(first <= last);
        foreach (var end in new[] { first, last })
            Assert.Equal(Math.Abs(band.Line.At(end) - 2), band.HalfWidth(end), 1e-6 * Math.Max(1, band.HalfWidth(end)));
    });

    /// <summary>Adding a point on the line narrows the interval, or makes one where there was none.</summary>
    [Fact]
    public void Where_PointOnTheLine_Narrows()
    {
        var narrowed = 0;
        Gen.Select(Points, Gen.Int[0, 120_000]).Sample((points, x) =>
        {
            var line = LeastSquaresLine.Through(points);
            if (Band.OfPrediction(line).Where(2) is not var (first, last))
                return;
            var more = Band.OfPrediction(LeastSquaresLine.Through([.. points, (x, line.At(x))])).Where(2);

            Assert.NotNull(more);
            Assert.True(more.Value.First >= first - 1e-6 * Math.Abs(first) - 1e-6 && more.Value.Last <= last + 1e-6 * Math.Abs(last) + 1e-6, $"{first} … {last} became {more}");
            if (more.Value.Last - more.Value.First < (last - first) * 0.999)
                Interlocked.Increment(ref narrowed);
        });
        Assert.True(narrowed > 20);
    }

    /// <summary>The band holds the next reading in nine of ten cases: drawn from a true line with normal scatter.</summary>
    [Fact]
    public void HalfWidth_HoldsNineOfTen()
    {
        var (random, held) = (new Random(7), 0);
        for (var trial = 0; trial < 4000; trial++)
        {
            var points = Enumerable.Range(0, 5).Select(i => (i * 10_000.0, 12 - i + Normal.Sample(random, 0, 0.2))).ToList();
            var band = Band.OfPrediction(LeastSquaresLine.Through(points));
            if (Math.Abs(12 - 7 + Normal.Sample(random, 0, 0.2) - band.Line.At(70_000)) <= band.HalfWidth(70_000))
                held++;
        }

        Assert.InRange(held / 4000.0, 0.885, 0.915);
    }

    /// <summary>From two readings: the true crossing lies within in nine of ten cases where each is wrong by the gauge's error in one of ten.</summary>
    [Fact]
    public void OfGauge_HoldsNineOfTen()
    {
        var (random, held) = (new Random(11), 0);
        for (var trial = 0; trial < 4000; trial++)
        {
            var (first, second) = (12 + Normal.Sample(random, 0, 0.2), 8 + Normal.Sample(random, 0, 0.2));
            var band = Band.OfGauge(LeastSquaresLine.Through([(0, first), (40_000, second)]), 1.6449 * 0.2);
            if (band.Where(3) is var (from, to) && from <= 90_000 && 90_000 <= to)
                held++;
        }

        Assert.InRange(held / 4000.0, 0.885, 0.915);
    }
}
