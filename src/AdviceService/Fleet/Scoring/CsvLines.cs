using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsvHelper;
using CsvHelper.Configuration;

namespace AdviceService.Fleet.Scoring;

/// <summary>A fleet from a spreadsheet (RFC 4180 with a header) as lines of JSON; empty cells are left out, empty rows too.</summary>
internal static class CsvLines
{
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The rows; the number of one is that of the line of the file on which it ends.</summary>
    /// <exception cref="ScoreException">The header is missing or names unknown columns.</exception>
    public static async IAsyncEnumerable<NumberedLine> ReadAsync(Stream input, [EnumeratorCancellation] CancellationToken cancel)
    {
        using var text = new StreamReader(input, leaveOpen: true);
        using var csv = new CsvParser(text, new CsvConfiguration(CultureInfo.InvariantCulture) { BadDataFound = null, MaxFieldSize = NdjsonLines.LongestLine });
        if (!await csv.ReadAsync())
            throw new ScoreException($"The table has no header. Columns are: {string.Join(", ", CsvColumn.Names)}.");
        var columns = CsvColumn.Of(csv.Record!);
        while (await csv.ReadAsync())
        {
            cancel.ThrowIfCancellationRequested();
            var cells = csv.Record!;
            if (Array.TrueForAll(cells, string.IsNullOrWhiteSpace))
                continue;
            var json = JsonSerializer.SerializeToUtf8Bytes(Request(columns, cells), Plain);
            yield return new NumberedLine(csv.RawRow, json.Length > NdjsonLines.LongestLine ? null : json);
        }
    }

    private static JsonObject Request(IReadOnlyList<CsvColumn> columns, string[] cells)
    {
        // A table without a column of the vehicle asks about a vehicle of which nothing is known.
        var request = new JsonObject { ["vehicle"] = new JsonObject() };
        for (var i = 0; i < Math.Min(columns.Count, cells.Length); i++)
        {
            if (!string.IsNullOrWhiteSpace(cells[i]))
                columns[i].Put(request, cells[i].Trim());
        }

        return request;
    }
}
