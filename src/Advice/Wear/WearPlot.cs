using System.Globalization;
using System.Text;

namespace Advice.Wear;

/// <summary>A small picture of readings over distance: points, line, band, the limit, and the interval on it. Numbers and units only, no text of a caller.</summary>
internal sealed class WearPlot
{
    private const int Width = 480;
    private const int Height = 280;
    private const int Left = 52;
    private const int Right = 16;
    private const int Top = 24;
    private const int Bottom = 40;
    private const int BandSteps = 40;

    private readonly (double Least, double Most) _x;
    private readonly (double Least, double Most) _y;

    private WearPlot((double, double) x, (double, double) y) => (_x, _y) = (x, y);

    /// <summary>The picture, an SVG document.</summary>
    /// <param name="trend">Readings with a line.</param>
    /// <param name="limit">The limit.</param>
    /// <param name="unit">Unit of readings and limit.</param>
    /// <param name="result">When it is reached.</param>
    public static string Of(WearTrend trend, double limit, string unit, Projection result)
    {
        var (first, last) = (trend.Readings[0].Km, trend.Readings[^1].Km);
        // An interval many times as long as what was driven would press the readings into a corner.
        var most = Math.Min(Math.Max(result.Latest?.Km ?? last, last), last + (4 * (last - first)));
        var values = trend.Readings.Select(reading => reading.Value).Append(limit).ToList();
        var margin = 0.12 * (values.Max() - values.Min());
        var plot = new WearPlot((first - (0.03 * (most - first)), most + (0.06 * (most - first))), (values.Min() - margin, values.Max() + margin));
        return plot.Draw(trend, limit, unit, result);
    }

    private string Draw(WearTrend trend, double limit, string unit, Projection result)
    {
        var (band, svg) = (trend.Band!, new StringBuilder());
        Add(svg, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Width} {Height}\" width=\"{Width}\" height=\"{Height}\" font-family=\"sans-serif\" font-size=\"11\" role=\"img\">");
        Add(svg, $"<title>Readings over distance with the limit</title><rect width=\"{Width}\" height=\"{Height}\" fill=\"white\"/>");
        Add(svg, $"<clipPath id=\"area\"><rect x=\"{Left}\" y=\"{Top}\" width=\"{Width - Left - Right}\" height=\"{Height - Top - Bottom}\"/></clipPath>");
        Axes(svg, unit);
        var steps = Enumerable.Range(0, BandSteps + 1).Select(i => _x.Least + (i * (_x.Most - _x.Least) / BandSteps)).ToList();
        var upper = steps.Select(x => (x, band.Line.At(x) + band.HalfWidth(x)));
        var lower = steps.AsEnumerable().Reverse().Select(x => (x, band.Line.At(x) - band.HalfWidth(x)));
        Add(svg, $"<g clip-path=\"url(#area)\"><polygon points=\"{Points(upper.Concat(lower))}\" fill=\"#dbe7f3\"/>");
        Add(svg, $"<polyline points=\"{Points([(_x.Least, band.Line.At(_x.Least)), (_x.Most, band.Line.At(_x.Most))])}\" fill=\"none\" stroke=\"#1f4e79\" stroke-width=\"1.5\"/>");
        Add(svg, $"<line x1=\"{X(_x.Least)}\" x2=\"{X(_x.Most)}\" y1=\"{Y(limit)}\" y2=\"{Y(limit)}\" stroke=\"#b00020\" stroke-dasharray=\"5 3\"/>");
        if (result is { Earliest: { } earliest, Latest: { } latest, Expected: { } expected })
        {
            Add(svg, $"<line x1=\"{X(earliest.Km)}\" x2=\"{X(latest.Km)}\" y1=\"{Y(limit)}\" y2=\"{Y(limit)}\" stroke=\"#b00020\" stroke-width=\"4\"/>");
            Add(svg, $"<line x1=\"{X(expected.Km)}\" x2=\"{X(expected.Km)}\" y1=\"{Y(limit) - 6}\" y2=\"{Y(limit) + 6}\" stroke=\"#b00020\" stroke-width=\"2\"/>");
        }

        foreach (var reading in trend.Readings)
            Add(svg, $"<circle cx=\"{X(reading.Km)}\" cy=\"{Y(reading.Value)}\" r=\"3.5\" fill=\"#1f4e79\"/>");
        Add(svg, $"</g><text x=\"{Left + 4}\" y=\"{Y(limit) - 6}\" fill=\"#b00020\">limit {limit:0.####} {unit}</text></svg>");
        return svg.ToString();
    }

    private void Axes(StringBuilder svg, string unit)
    {
        Add(svg, $"<path d=\"M{Left} {Top}V{Height - Bottom}H{Width - Right}\" fill=\"none\" stroke=\"#444\"/><text x=\"{Left}\" y=\"{Top - 9}\" text-anchor=\"middle\">{unit}</text>");
        foreach (var x in Ticks(_x.Least, _x.Most))
            Add(svg, $"<path d=\"M{X(x)} {Height - Bottom}v4\" stroke=\"#444\"/><text x=\"{X(x)}\" y=\"{Height - Bottom + 16}\" text-anchor=\"middle\">{x:#,0}</text>");
        foreach (var y in Ticks(_y.Least, _y.Most))
            Add(svg, $"<path d=\"M{Left} {Y(y)}h-4\" stroke=\"#444\"/><text x=\"{Left - 7}\" y=\"{Y(y) + 4}\" text-anchor=\"end\">{y:0.###}</text>");
        Add(svg, $"<text x=\"{Width - Right}\" y=\"{Height - 8}\" text-anchor=\"end\">km</text>");
    }

    /// <summary>Round numbers, three to six of them.</summary>
    private static IEnumerable<double> Ticks(double least, double most)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(most - least)));
        var step = new[] { 0.2, 0.5, 1, 2 }.Select(factor => factor * power).First(one => (most - least) / one <= 6);
        for (var tick = Math.Ceiling(least / step); tick * step <= most; tick++)
            yield return tick * step;
    }

    private string Points(IEnumerable<(double X, double Y)> points) =>
        string.Join(' ', points.Select(point => string.Create(CultureInfo.InvariantCulture, $"{X(point.X)},{Y(point.Y)}")));

    private double X(double km) => Math.Round(Left + ((Width - Left - Right) * (km - _x.Least) / (_x.Most - _x.Least)), 1);

    private double Y(double value) => Math.Round(Height - Bottom - ((Height - Top - Bottom) * (value - _y.Least) / (_y.Most - _y.Least)), 1);

    private static void Add(StringBuilder svg, FormattableString part) => svg.Append(part.ToString(CultureInfo.InvariantCulture));
}
