using MathNet.Numerics.Distributions;

namespace Advice.Wear;

/// <summary>
/// The band about a line: half its width at x is √(K · (C + (x − mean)² / Sxx)). From three points on it is the prediction band of the next reading,
/// K = t² s², C = 1 + 1/n, with Student's t for n − 2 degrees of freedom. From two the scatter cannot be seen: K is the square of the stated error of
/// the gauge, propagated to the line, C = 1/n.
/// </summary>
/// <param name="Line">The line.</param>
/// <param name="K">Scale of the width, squared.</param>
/// <param name="C">Its constant part.</param>
public sealed record Band(LeastSquaresLine Line, double K, double C)
{
    /// <summary>Share of the cases that the band holds.</summary>
    public const double Confidence = 0.90;

    /// <summary>The prediction band of a line through three points or more.</summary>
    public static Band OfPrediction(LeastSquaresLine line)
    {
        var t = StudentT.InvCDF(0, 1, line.Count - 2, (1 + Confidence) / 2);
        return new Band(line, t * t * line.ResidualSquares / (line.Count - 2), 1 + (1.0 / line.Count));
    }

    /// <summary>The band of a line through two points of which each is wrong by at most so much in nine of ten cases.</summary>
    public static Band OfGauge(LeastSquaresLine line, double gaugeError) => new(line, gaugeError * gaugeError, 1.0 / line.Count);

    /// <summary>Half of the width at x.</summary>
    public double HalfWidth(double x) => Math.Sqrt(K * (C + ((x - Line.MeanX) * (x - Line.MeanX) / Line.SumXX)));

    /// <summary>
    /// The band turned round: between which x it holds that y. With u = x − mean and d = mean y − y the edges solve (d + b u)² = K (C + u² / Sxx). Null where
    /// the slope does not stand out from the scatter (b² ≤ K / Sxx): the edges then never both reach y, and nothing is determined.
    /// </summary>
    public (double First, double Last)? Where(double y)
    {
        var (a, d) = ((Line.Slope * Line.Slope) - (K / Line.SumXX), Line.MeanY - y);
        if (a <= 0)
            return null;
        // The discriminant reduces to K (C a + d² / Sxx): no difference of nearly equal terms, never negative.
        var root = Math.Sqrt(K * ((C * a) + (d * d / Line.SumXX)));
        var middle = -d * Line.Slope;
        return (Line.MeanX + ((middle - root) / a), Line.MeanX + ((middle + root) / a));
    }
}
