namespace Advice.Arithmetic;

/// <summary>A published table, read between its rows along straight lines. Beyond its ends the end values hold.</summary>
/// <param name="Rows">Its rows, x ascending, y strictly monotonic.</param>
public sealed record PiecewiseLinear(params IReadOnlyList<(double X, double Y)> Rows)
{
    /// <summary>The value at x.</summary>
    public double At(double x) => Between(Rows, x);

    /// <summary>The x at which the table has that value.</summary>
    public double InverseAt(double y)
    {
        var turned = Rows.Select(row => (X: row.Y, Y: row.X)).OrderBy(row => row.X).ToList();
        return Between(turned, y);
    }

    private static double Between(IReadOnlyList<(double X, double Y)> rows, double x)
    {
        if (x <= rows[0].X)
            return rows[0].Y;
        for (var i = 1; i < rows.Count; i++)
        {
            if (x <= rows[i].X)
                return rows[i - 1].Y + ((x - rows[i - 1].X) * (rows[i].Y - rows[i - 1].Y) / (rows[i].X - rows[i - 1].X));
        }

        return rows[^1].Y;
    }
}
