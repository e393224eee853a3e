using System.Buffers;
using System.Globalization;
using System.IO.Pipelines;
using CsvHelper;
using Parquet;
using Parquet.Serialization;

namespace AdviceService.Fleet.Scoring;

/// <summary>Replies as a table with a row for each line of the fleet.</summary>
internal static class ReplyTable
{
    private const int RowsOfAGroup = 50_000;

    private static readonly (string Name, Func<ReplyRow, object?> Value)[] Columns =
    [
        ("id", row => row.Id), ("line", row => row.Line), ("driving", row => row.Driving), ("expectedHarm", row => row.ExpectedHarm),
        ("checks", row => row.Checks), ("faults", row => row.Faults), ("minutes", row => row.Minutes), ("lift", row => row.Lift is { } lift ? (lift ? "true" : "false") : null),
        ("withinDays", row => row.WithinDays), ("revision", row => row.Revision), ("overlays", row => row.Overlays), ("problem", row => row.Problem),
    ];

    /// <summary>Writes the replies of triage as a table, a part of them in memory at a time.</summary>
    public static async Task WriteAsync(Stream replies, Stream target, ScoreFormat format)
    {
        var rows = LinesAsync(replies).Select(reply => ReplyRow.Of(reply));
        if (format == ScoreFormat.Csv)
            await WriteCsvAsync(rows, target);
        else
            await ParquetSerializer.SerializeAsync(rows.ToBlockingEnumerable(), target, new ParquetOptions { RowGroupSize = RowsOfAGroup });
    }

    /// <summary>Writes rows as they come, with a header (RFC 4180).</summary>
    public static async Task WriteCsvAsync(IAsyncEnumerable<ReplyRow> rows, Stream target)
    {
        await using var csv = new CsvWriter(new StreamWriter(target, leaveOpen: true), CultureInfo.InvariantCulture);
        foreach (var column in Columns)
            csv.WriteField(column.Name);
        await csv.NextRecordAsync();
        await foreach (var row in rows)
        {
            foreach (var column in Columns)
                csv.WriteField(column.Value(row));
            await csv.NextRecordAsync();
        }
    }

    /// <summary>The replies from the first on.</summary>
    public static async IAsyncEnumerable<byte[]> LinesAsync(Stream replies)
    {
        replies.Position = 0;
        var lines = PipeReader.Create(replies, new StreamPipeReaderOptions(leaveOpen: true));
        while (await lines.ReadAsync() is { Buffer: var left } read)
        {
            while (left.PositionOf((byte)'\n') is { } end)
            {
                yield return left.Slice(0, end).ToArray();
                left = left.Slice(left.GetPosition(1, end));
            }

            lines.AdvanceTo(left.Start, left.End);
            if (read.IsCompleted)
                yield break;
        }
    }
}
