using System.Globalization;
using System.Net;
using System.Text;
using Advice.Knowledge;
using AdviceService.Fleet.Scoring;

namespace AdviceService.Terminal;

/// <summary>What a fleet adds up to as a page that needs nothing beside itself.</summary>
internal static class TallyPage
{
    private const int Most = 15;
    private const int WidestBarPixels = 420;

    private const string Style =
        "body{font:16px/1.5 system-ui,sans-serif;max-width:60rem;margin:2rem auto;padding:0 1rem;color:#222}"
        + "table{border-collapse:collapse;width:100%}td{padding:.15rem .5rem}td.n{text-align:right;white-space:nowrap}"
        + "td.b{width:440px}rect{fill:#37658c}";

    /// <summary>The page.</summary>
    public static string Of(Tally tally, Catalogue catalogue)
    {
        var page = new StringBuilder("<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>Fleet summary</title><style>")
            .Append(Style).Append("</style></head><body><h1>Fleet summary</h1><p>")
            .Append(CultureInfo.InvariantCulture, $"{tally.Answers} vehicles answered, {tally.Problems} problems, {tally.Minutes} minutes in the workshop.</p>");
        Bars(page, "May it be driven", [.. tally.Driving.Select(one => (one.Key, one.Value))]);
        Bars(page, "When to be seen", [.. tally.WithinDays.Select(one => (Within(one.Key), one.Value))]);
        Bars(page, "Checks needed most", [.. Tally.Top(tally.Checks, Most).Select(one => (TallyNames.OfCheck(one.Key, catalogue), one.Value))]);
        Bars(page, "Parts needed most, if the likeliest faults are found", [.. Tally.Top(tally.Parts, Most).Select(one => (TallyNames.OfPart(one.Key, catalogue), one.Value))]);
        Bars(page, "Faults suspected most", [.. Tally.Top(tally.Faults, Most).Select(one => (TallyNames.OfFault(one.Key, catalogue), one.Value))]);
        return page.Append("</body></html>\n").ToString();
    }

    /// <summary>A number of days in words.</summary>
    public static string Within(int days) => days switch
    {
        < 0 => "at the next service",
        0 => "before it moves again",
        1 => "within a day",
        _ => string.Create(CultureInfo.InvariantCulture, $"within {days} days"),
    };

    private static void Bars(StringBuilder page, string title, IReadOnlyList<(string Name, int Count)> bars)
    {
        if (bars.Count == 0)
            return;
        var most = bars.Max(bar => bar.Count);
        page.Append("<h2>").Append(title).Append("</h2><table>");
        foreach (var (name, count) in bars)
        {
            var width = (int)Math.Ceiling((double)count / most * WidestBarPixels);
            page.Append("<tr><td>").Append(WebUtility.HtmlEncode(name))
                .Append(CultureInfo.InvariantCulture, $"</td><td class=\"n\">{count}</td><td class=\"b\"><svg width=\"{WidestBarPixels}\" height=\"14\"><rect width=\"{width}\" height=\"14\"/></svg></td></tr>");
        }

        page.Append("</table>");
    }
}
