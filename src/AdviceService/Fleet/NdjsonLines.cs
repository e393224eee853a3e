using System.Buffers;
using System.IO.Pipelines;
using System.Runtime.CompilerServices;

namespace AdviceService.Fleet;

/// <summary>Newline-delimited JSON as lines; blank ones are counted and left out.</summary>
internal static class NdjsonLines
{
    /// <summary>Longest line, bytes.</summary>
    public const int LongestLine = 64 * 1024;

    /// <summary>The lines until the input ends. However long a line is, no more of it than <see cref="LongestLine"/> is kept.</summary>
    public static async IAsyncEnumerable<NumberedLine> ReadAsync(PipeReader input, [EnumeratorCancellation] CancellationToken cancel)
    {
        var (number, skipping) = (1, false);
        while (true)
        {
            var read = await input.ReadAsync(cancel);
            var left = read.Buffer;
            while (left.PositionOf((byte)'\n') is { } end)
            {
                if (Line(number, left.Slice(0, end), skipping) is { } line)
                    yield return line;
                left = left.Slice(left.GetPosition(1, end));
                (number, skipping) = (number + 1, false);
            }

            if (left.Length > LongestLine)
            {
                skipping = true;
                left = left.Slice(left.End);
            }

            if (read.IsCompleted && (left.Length > 0 || skipping) && Line(number, left, skipping) is { } last)
                yield return last;
            input.AdvanceTo(read.IsCompleted ? read.Buffer.End : left.Start, read.Buffer.End);
            if (read.IsCompleted)
                yield break;
        }
    }

    private static NumberedLine? Line(int number, ReadOnlySequence<byte> line, bool skipping) =>
        skipping || line.Length > LongestLine ? new NumberedLine(number, null)
        : IsBlank(line) ? null
        : new NumberedLine(number, line.ToArray());

    private static bool IsBlank(ReadOnlySequence<byte> line)
    {
        foreach (var part in line)
        {
            if (part.Span.ContainsAnyExcept(" \t\r"u8))
                return false;
        }

        return true;
    }
}
