using System.Globalization;
using System.Security;
using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Advice.Rules.Bench;

/// <summary>The faults of a system as a picture in SVG: signs on the left, faults in the middle, the checks that find them on the right.</summary>
public sealed class SystemDrawing(Catalogue catalogue)
{
    private const int Row = 22;
    private const int Box = 380;
    private const int Gap = 260;
    private const int Margin = 16;
    private const int Top = 76;
    private const int Legend = 120;
    private const int Letters = 58;
    private const double Size = 11;

    private readonly double _mostHarm = catalogue.Faults.Values.Max(fault => fault.Consequence.Harm);

    /// <summary>The picture, line by line. A line is the wider the more often a fault shows the sign, or the more surely the check finds
    /// it; a fault is the darker the more harm it does. Each says what it is when pointed at.</summary>
    /// <param name="system">Id of the system.</param>
    public IEnumerable<string> Of(string system)
    {
        var own = catalogue.Faults.Values.Where(fault => fault.System == system).Select(fault => fault.Id).ToHashSet();
        var shows = catalogue.Rules.Values.OfType<ShowsRule>().Where(rule => own.Contains(rule.Fault)).OrderBy(rule => rule.Id, StringComparer.Ordinal).ToList();
        var finds = own.Order(StringComparer.Ordinal).SelectMany(fault => catalogue.ChecksByFault[fault].Select(check => (Fault: fault, Check: check.Id))).ToList();
        var columns = new DrawingColumns([.. own.Order(StringComparer.Ordinal)], [.. shows.Select(rule => (rule.Fault, rule.Sign))], finds);
        var (signs, faults, checks) = (columns.Signs, columns.Faults, columns.Checks);
        var rows = Math.Max(faults.Count, Math.Max(signs.Count, checks.Count));

        yield return $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {(2 * Margin) + (3 * Box) + (2 * Gap)} {Top + (rows * Row) + Legend}\" font-family=\"sans-serif\" font-size=\"{Size.ToString(CultureInfo.InvariantCulture)}\">";
        yield return "<style>path:hover { stroke-width: 5; stroke-opacity: 1 }</style>";
        yield return "<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>";
        foreach (var (column, title) in new[] { "what is noticed or stored", $"what may be wrong: {catalogue.Systems.First(one => one.Id == system).Name.Trade}", "what finds it" }.Index())
            yield return Words(Left(column) + (Box / 2), 34, title, 17, "middle");
        yield return Words(Left(1) - (Gap / 2), 34, "← shows itself by", 13, "middle");
        yield return Words(Left(2) - (Gap / 2), 34, "is found by →", 13, "middle");
        foreach (var rule in shows)
            yield return Line(0, Middle(signs.IndexOf(rule.Sign), signs.Count, rows), 1, Middle(faults.IndexOf(rule.Fault), faults.Count, rows), rule.Often, faults.IndexOf(rule.Fault), Wording.WithReason(rule));
        foreach (var (fault, check) in finds)
            yield return Line(1, Middle(faults.IndexOf(fault), faults.Count, rows), 2, Middle(checks.IndexOf(check), checks.Count, rows), catalogue.Checks[check].Surely(fault), faults.IndexOf(fault), $"{check} finds {fault} surely {Wording.Number(catalogue.Checks[check].Surely(fault))}");
        foreach (var (i, sign) in signs.Index())
            yield return Node(Left(0), Middle(i, signs.Count, rows), Name(sign), sign.Id, sign.Kind == SignKind.Code ? "#e4e7ec" : "#eef4fb");
        foreach (var (i, fault) in faults.Select(id => catalogue.Faults[id]).Index())
            yield return Node(Left(1), Middle(i, faults.Count, rows), fault.Name.Trade, $"{fault.Id}, base rate {Wording.Number(fault.Prior)}, {fault.Consequence.Id}", Shade(fault.Consequence));
        foreach (var (i, check) in checks.Select(id => catalogue.Checks[id]).Index())
            yield return Node(Left(2), Middle(i, checks.Count, rows), check.Title.Trade, $"{check.Id}, {check.Minutes} min", "#edf7ed");
        foreach (var line in Explained(Top + (rows * Row) + 24))
            yield return line;
        yield return "</svg>";
    }

    /// <summary>What widths and shades mean.</summary>
    private IEnumerable<string> Explained(int top)
    {
        foreach (var (i, (word, often)) in new[] { ("rarely", 0.05), ("sometimes", 0.2), ("often", 0.5), ("usually", 0.8), ("nearly always", 0.95) }.Index())
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"<path d=\"M{Left(0)} {top + (i * 18)} h60\" fill=\"none\" stroke=\"#456\" stroke-width=\"{Width(often):0.##}\"/>");
            yield return Words(Left(0) + 72, top + (i * 18) + 4, $"{word}: of a hundred such faults {often * 100:0} show the sign, or are found", Size, "start");
        }

        foreach (var (i, consequence) in catalogue.Faults.Values.Select(fault => fault.Consequence).DistinctBy(one => one.Id).OrderBy(one => one.Harm).Index())
        {
            yield return $"<rect x=\"{Left(1)}\" y=\"{top + (i * 18) - 7}\" width=\"60\" height=\"13\" rx=\"3\" fill=\"{Shade(consequence)}\" stroke=\"#999\"/>";
            yield return Words(Left(1) + 72, top + (i * 18) + 4, $"{consequence.Id}: {consequence.Name}", Size, "start");
        }

        yield return Words(Left(2), top + 4, "The lines of one fault have one colour.", Size, "start");
        yield return Words(Left(2), top + 22, "In a browser, point at a line or box to read its rule.", Size, "start");
    }

    private static int Left(int column) => Margin + (column * (Box + Gap));

    // Shorter columns are spread over the height of the longest.
    private static double Middle(int row, int count, int rows) => Top + ((row + 0.5) * Row * rows / count);

    private static double Width(double strength) => 0.4 + (2.8 * strength);

    private static string Line(int from, double y1, int to, double y2, double strength, int fault, string title)
    {
        var (x1, x2) = (Left(from) + Box, Left(to));
        // Neighbours get hues far apart: each a golden section of the circle further.
        var hue = fault * 137.5 % 360;
        return string.Create(CultureInfo.InvariantCulture, $"<path d=\"M{x1} {y1:0.#} C{x1 + (Gap / 2)} {y1:0.#} {x2 - (Gap / 2)} {y2:0.#} {x2} {y2:0.#}\" fill=\"none\" stroke=\"hsl({hue:0} 55% 42%)\" stroke-opacity=\"0.6\" stroke-width=\"{Width(strength):0.##}\"><title>{Escaped(title)}</title></path>");
    }

    private static string Node(int left, double y, string label, string title, string fill) => string.Create(
        CultureInfo.InvariantCulture,
        $"<g><title>{Escaped(title)}</title><rect x=\"{left}\" y=\"{y - 9:0.#}\" width=\"{Box}\" height=\"18\" rx=\"3\" fill=\"{fill}\" stroke=\"#999\"/>{Words(left + 6, y + 4, label, label.Length > Letters ? Size * Letters / label.Length : Size, "start")}</g>");

    private static string Words(double x, double y, string text, double size, string anchor) => string.Create(
        CultureInfo.InvariantCulture, $"<text x=\"{x}\" y=\"{y:0.#}\" text-anchor=\"{anchor}\" font-size=\"{size:0.##}\">{Escaped(text)}</text>");

    private string Shade(Consequence consequence) => $"hsl(30 70% {95 - (int)(25 * consequence.Harm / _mostHarm)}%)";

    private string Name(Sign sign) => sign.Kind == SignKind.Code ? $"{sign.Id} {catalogue.Codes[sign.Id].Meaning.Trade}" : catalogue.Symptoms[sign.Id].Name.Trade;

    private static string Escaped(string text) => SecurityElement.Escape(text);
}
