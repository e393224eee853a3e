using System.Globalization;
using System.Text;

namespace AdviceService.Tests.Fleet;

/// <summary>Invented vehicles with what their drivers notice, as lines and as a table.</summary>
internal static class SmallFleet
{
    private static readonly string[] Complaints =
    [
        "It squeals when braking", "Clunk from the rear over bumps", "It overheats in traffic", "The brake pedal slowly sinks to the floor",
        "Whine from the rear that rises with speed", "", "Shakes at highway speed",
    ];

    public static string Lines(int count)
    {
        var lines = new StringBuilder();
        for (var i = 1; i <= count; i++)
        {
            lines.Append(i % 10 == 0
                ? string.Create(CultureInfo.InvariantCulture, $$$"""{"id":{{{i}}},"vehicle":{"modelYear":1200}}""")
                : string.Create(CultureInfo.InvariantCulture, $$$"""{"id":{{{i}}},"vehicle":{"modelYear":{{{2000 + (i % 20)}}}},"complaint":"{{{Complaints[i % Complaints.Length]}}}"}"""));
            lines.Append('\n');
        }

        return lines.ToString();
    }

    public static string Table(int count)
    {
        var rows = new StringBuilder("id,vehicle.modelYear,complaint\r\n");
        for (var i = 1; i <= count; i++)
            rows.Append(i % 10 == 0
                ? string.Create(CultureInfo.InvariantCulture, $"{i},1200,\r\n")
                : string.Create(CultureInfo.InvariantCulture, $"{i},{2000 + (i % 20)},\"{Complaints[i % Complaints.Length]}\"\r\n"));
        return rows.ToString();
    }
}
