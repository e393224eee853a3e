namespace Advice.Wear;

/// <summary>The straight line with the least squared distance from points, y over x, and what its band needs. Reckoned about the mean, so no digits cancel.</summary>
/// <param name="Count">Number of points, at least two with different x.</param>
/// <param name="MeanX">Mean of x.</param>
/// <param name="MeanY">Mean of y; the line passes there.</param>
/// <param name="Slope">Rise of y for each x.</param>
/// <param name="SumXX">Sum of the squares of x − mean.</param>
/// <param name="ResidualSquares">Sum of the squared distances from the line.</param>
public sealed record LeastSquaresLine(int Count, double MeanX, double MeanY, double Slope, double SumXX, double ResidualSquares)
{
    /// <summary>y at x = 0.</summary>
    public double Intercept => MeanY - (Slope * MeanX);

    /// <summary>Standard deviation of the residuals; three points and more.</summary>
    public double ResidualDeviation => Math.Sqrt(ResidualSquares / (Count - 2));

    /// <summary>The line through points.</summary>
    public static LeastSquaresLine Through(IReadOnlyList<(double X, double Y)> points)
    {
        var (x, y) = (points.Average(point => point.X), points.Average(point => point.Y));
        var xx = points.Sum(point => (point.X - x) * (point.X - x));
        var slope = points.Sum(point => (point.X - x) * (point.Y - y)) / xx;
        return new LeastSquaresLine(points.Count, x, y, slope, xx, points.Sum(point => Math.Pow(point.Y - y - (slope * (point.X - x)), 2)));
    }

    /// <summary>y on the line.</summary>
    public double At(double x) => MeanY + (Slope * (x - MeanX));
}
