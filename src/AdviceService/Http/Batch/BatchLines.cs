using System.Buffers;
using System.IO.Pipelines;
using System.Threading.Channels;

namespace AdviceService.Http.Batch;

/// <summary>Takes the lines of a batch as fast as they come, so that a caller who sends everything before reading is not kept waiting.</summary>
internal static class BatchLines
{
    /// <summary>Longest line, bytes.</summary>
    public const int LongestLine = 64 * 1024;

    /// <summary>Reads lines until the input ends, and closes the channel.</summary>
    /// <param name="input">The input.</param>
    /// <param name="lines">Takes each line with its number; null content for one that is too long.</param>
    /// <param name="cancel">Stops reading.</param>
    public static async Task ReadAsync(PipeReader input, ChannelWriter<(int Number, byte[]? Line)> lines, CancellationToken cancel)
    {
        var (number, skipping) = (1, false);
        Exception? fault = null;
        try
        {
            while (true)
            {
                var read = await input.ReadAsync(cancel);
                var left = read.Buffer;
                while (left.PositionOf((byte)'\n') is { } end)
                {
                    Take(left.Slice(0, end));
                    left = left.Slice(left.GetPosition(1, end));
                }

                if (left.Length > LongestLine)
                {
                    skipping = true;
                    left = left.Slice(left.End);
                }

                if (read.IsCompleted && (left.Length > 0 || skipping))
                    Take(left);
                input.AdvanceTo(read.IsCompleted ? read.Buffer.End : left.Start, read.Buffer.End);
                if (read.IsCompleted)
                    return;
            }
        }
        catch (Exception broken) when (broken is IOException or OperationCanceledException or BadHttpRequestException)
        {
            fault = broken;
        }
        finally
        {
            lines.Complete(fault);
        }

        void Take(ReadOnlySequence<byte> line)
        {
            var tooLong = skipping || line.Length > LongestLine;
            if (tooLong || !IsBlank(line))
                lines.TryWrite((number, tooLong ? null : line.ToArray()));
            number++;
            skipping = false;
        }
    }

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
