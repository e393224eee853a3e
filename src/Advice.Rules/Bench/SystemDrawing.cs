using System.Globalization;
using System.Security;
using Advice.Knowledge;

namespace Advice.Rules.Bench;

/// <summary>The faults of a system as a picture in SVG: signs on the left, faults in the middle, the checks that find them on the right.</summary>
public sealed class SystemDrawing(Catalogue catalogue)
{
    private const int Row = 22;
    private const int Box = 340;
    private const int Gap = 220;
    private const int Top = 60;

    /// <summary>The picture, line by line. A line is the wider the more often a fault shows the sign, or the more surely the check finds
    /// it; a fault is the darker the more harm it does. Each says what it is when pointed at.</summary>
    /// <param name="system">Id of the system.</param>
    public IEnumerable<string> Of(string system)
    {
        var faults = catalogue.Faults.Values.Where(fault => fault.System == system).OrderBy(fault => fault.Id, StringComparer.Ordinal).Select(fault => fault.Id).ToList();
        var shows = catalogue.Rules.Values.OfType<ShowsRule>().Where(rule => faults.Contains(rule.Fault)).OrderBy(rule => rule.Id, StringComparer.Ordinal).ToList();
        var finds = faults.SelectMany(fault => catalogue.ChecksByFault[fault].Select(check => (Fault: fault, Check: check))).ToList();
        var signs = Beside(shows.Select(rule => (rule.Sign, faults.IndexOf(rule.Fault))), sign => sign.ToString());
        var checks = Beside(finds.Select(one => (one.Check.Id, faults.IndexOf(one.Fault))), id => id);
        var rows = Math.Max(faults.Count, Math.Max(signs.Count, checks.Count));
        var most = catalogue.Faults.Values.Max(fault => fault.Consequence.Harm);

        yield return $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {(3 * Box) + (2 * Gap)} {Top + (rows * Row) + 10}\" font-family=\"sans-serif\" font-size=\"11\">";
        yield return "<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>";
        foreach (var (column, title) in new[] { "symptoms and trouble codes", $"faults: {catalogue.Systems.First(one => one.Id == system).Name}", "checks" }.Index())
            yield return $"<text x=\"{Left(column) + (Box / 2)}\" y=\"30\" text-anchor=\"middle\" font-size=\"16\">{Escaped(title)}</text>";
        foreach (var rule in shows)
            yield return Line(0, Middle(signs.IndexOf(rule.Sign), signs.Count, rows), 1, Middle(faults.IndexOf(rule.Fault), faults.Count, rows), rule.Often, Wording.WithReason(rule));
        foreach (var (fault, check) in finds)
            yield return Line(1, Middle(faults.IndexOf(fault), faults.Count, rows), 2, Middle(checks.IndexOf(check.Id), checks.Count, rows), check.Surely(fault), $"{check.Id} finds {fault} surely {Wording.Number(check.Surely(fault))}");
        foreach (var (i, sign) in signs.Index())
            yield return Node(0, Middle(i, signs.Count, rows), Name(sign), sign.Id, "#eef4fb");
        foreach (var (i, fault) in faults.Select(id => catalogue.Faults[id]).Index())
            yield return Node(1, Middle(i, faults.Count, rows), fault.Name.Trade, $"{fault.Id}, base rate {Wording.Number(fault.Prior)}, {fault.Consequence.Id}", $"hsl(30 70% {95 - (int)(25 * fault.Consequence.Harm / most)}%)");
        foreach (var (i, check) in checks.Select(id => catalogue.Checks[id]).Index())
            yield return Node(2, Middle(i, checks.Count, rows), check.Title.Trade, $"{check.Id}, {check.Minutes} min", "#edf7ed");
        yield return "</svg>";
    }

    /// <summary>What is joined to faults, in the order of the middle of its faults, so that few lines cross.</summary>
    private static List<T> Beside<T>(IEnumerable<(T Item, int Fault)> joined, Func<T, string> name) =>
        [.. joined.GroupBy(one => one.Item).OrderBy(group => group.Average(one => one.Fault)).ThenBy(group => name(group.Key), StringComparer.Ordinal).Select(group => group.Key)];

    private static int Left(int column) => column * (Box + Gap);

    // Shorter columns are spread over the height of the longest.
    private static double Middle(int row, int count, int rows) => Top + ((row + 0.5) * Row * rows / count);

    private static string Line(int from, double y1, int to, double y2, double strength, string title)
    {
        var (x1, x2) = (Left(from) + Box, Left(to));
        return string.Create(CultureInfo.InvariantCulture, $"<path d=\"M{x1} {y1:0.#} C{x1 + (Gap / 2)} {y1:0.#} {x2 - (Gap / 2)} {y2:0.#} {x2} {y2:0.#}\" fill=\"none\" stroke=\"#456\" stroke-opacity=\"0.45\" stroke-width=\"{0.4 + (2.4 * strength):0.##}\"><title>{Escaped(title)}</title></path>");
    }

    private static string Node(int column, double y, string label, string title, string fill)
    {
        // A long label is pressed together rather than cut.
        var squeeze = label.Length > 60 ? $" textLength=\"{Box - 12}\" lengthAdjust=\"spacingAndGlyphs\"" : "";
        return string.Create(CultureInfo.InvariantCulture, $"<g><title>{Escaped(title)}</title><rect x=\"{Left(column)}\" y=\"{y - 9:0.#}\" width=\"{Box}\" height=\"18\" rx=\"3\" fill=\"{fill}\" stroke=\"#999\"/><text x=\"{Left(column) + 6}\" y=\"{y + 4:0.#}\"{squeeze}>{Escaped(label)}</text></g>");
    }

    private string Name(Sign sign) => sign.Kind == SignKind.Code ? $"{sign.Id} {catalogue.Codes[sign.Id].Meaning.Trade}" : catalogue.Symptoms[sign.Id].Name.Trade;

    private static string Escaped(string text) => SecurityElement.Escape(text);
}
