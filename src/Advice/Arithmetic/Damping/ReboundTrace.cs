namespace Advice.Arithmetic.Damping;

/// <summary>
/// The free swing of a corner, pushed down and released: extremes about the rest position (median of the last fifth), one for each swing from side to
/// side, and the straight line through their logarithms. Two swings make a cycle, so δ is twice the fall from one extreme to the next.
/// </summary>
/// <param name="Extremes">Time and distance from rest of each extreme, from the largest on.</param>
/// <param name="Decrement">Logarithmic decrement; null where fewer than two extremes stand out.</param>
/// <param name="Hertz">Frequency of the swing; null likewise.</param>
public sealed record ReboundTrace(IReadOnlyList<(double Seconds, double Amplitude)> Extremes, double? Decrement, double? Hertz)
{
    // What is smaller than this share of the largest extreme is noise or friction.
    private const double Visible = 0.03;

    /// <summary>Reads a trace of position over seconds.</summary>
    public static ReboundTrace Of(IReadOnlyList<(double Seconds, double Position)> trace)
    {
        var tail = trace.Skip(trace.Count * 4 / 5).Select(point => point.Position).Order().ToList();
        var rest = (tail[(tail.Count - 1) / 2] + tail[tail.Count / 2]) / 2;
        var swings = Swings(trace.Select(point => (point.Seconds, Amplitude: point.Position - rest)));
        var largest = swings.Count == 0 ? 0 : swings.Max(swing => Math.Abs(swing.Amplitude));
        var extremes = swings.SkipWhile(swing => Math.Abs(swing.Amplitude) < largest)
            .TakeWhile(swing => Math.Abs(swing.Amplitude) >= Visible * largest)
            .Select(swing => (swing.Seconds, Math.Abs(swing.Amplitude))).ToList();
        if (extremes.Count < 2 || largest == 0)
            return new ReboundTrace(extremes, null, null);
        var fall = -Slope([.. extremes.Select((extreme, index) => ((double)index, Math.Log(extreme.Item2)))]);
        return new ReboundTrace(extremes, 2 * fall, (extremes.Count - 1) / (2 * (extremes[^1].Seconds - extremes[0].Seconds)));
    }

    /// <summary>The largest excursion on each side in turn.</summary>
    private static List<(double Seconds, double Amplitude)> Swings(IEnumerable<(double Seconds, double Amplitude)> trace)
    {
        var swings = new List<(double Seconds, double Amplitude)>();
        foreach (var point in trace.Where(point => point.Amplitude != 0))
        {
            if (swings.Count == 0 || Math.Sign(swings[^1].Amplitude) != Math.Sign(point.Amplitude))
                swings.Add(point);
            else if (Math.Abs(point.Amplitude) > Math.Abs(swings[^1].Amplitude))
                swings[^1] = point;
        }

        return swings;
    }

    private static double Slope(IReadOnlyList<(double X, double Y)> points)
    {
        var (x, y) = (points.Average(point => point.X), points.Average(point => point.Y));
        return points.Sum(point => (point.X - x) * (point.Y - y)) / points.Sum(point => (point.X - x) * (point.X - x));
    }
}
