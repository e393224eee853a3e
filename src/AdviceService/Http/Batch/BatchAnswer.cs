using System.Buffers;
using System.Text.Json;
using System.Threading.Tasks.Dataflow;
using AdviceService.Fleet;
using AdviceService.Json;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core.Features;

namespace AdviceService.Http.Batch;

/// <summary>One batch: its lines are read, answered on all cores and the replies sent in order.</summary>
internal sealed class BatchAnswer(HttpContext http, LineAnswers answers, BatchMemory memory, TimeProvider clock)
{
    /// <summary>Largest batch of one request, bytes: it may wait in memory as a whole where memory goes round.</summary>
    public const long Most = 256L * 1024 * 1024;

    private const int SentAtOnce = 64 * 1024;

    /// <summary>Answers it.</summary>
    /// <param name="stopping">Ends it after the reply that is being sent; its last line then says that it is not complete.</param>
    public async Task AnswerAsync(CancellationToken stopping)
    {
        if (http.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = Most;
        // Whoever sends everything before reading takes nothing for a while, and is no attacker for that.
        if (http.Features.Get<IHttpMinResponseDataRateFeature>() is { } rate)
            rate.MinDataRate = null;
        using var end = CancellationTokenSource.CreateLinkedTokenSource(http.RequestAborted, stopping);
        using var ahead = new ReadAhead(memory, clock, http.Abort);
        var waiting = new BufferBlock<NumberedLine>();
        var working = answers.InOrder(Environment.ProcessorCount, end.Token);
        var reading = ReadAsync(waiting, ahead, end.Token);
        var handing = HandOnAsync(waiting, working, ahead, end.Token);
        var (replies, problems) = await SendAsync(working, ahead, end.Token);
        await handing;
        http.RequestAborted.ThrowIfCancellationRequested();
        var complete = await reading && !end.IsCancellationRequested;
        Write(JsonSerializer.SerializeToUtf8Bytes(new EndLine(new BatchCount(replies, replies - problems, problems, complete)), Written.As.EndLine));
        await http.Response.BodyWriter.FlushAsync(http.RequestAborted);
    }

    /// <summary>Whether the input could be read to its end.</summary>
    private async Task<bool> ReadAsync(BufferBlock<NumberedLine> waiting, ReadAhead ahead, CancellationToken end)
    {
        try
        {
            await foreach (var line in NdjsonLines.ReadAsync(http.Request.BodyReader, end))
            {
                if (!await ahead.RoomAsync(line.Bytes, end))
                    return false;
                waiting.Post(line);
            }

            return true;
        }
        // Data that is invalid: the caller's compression is broken.
        catch (Exception cut) when (cut is OperationCanceledException or IOException or InvalidDataException or BadHttpRequestException)
        {
            return false;
        }
        finally
        {
            waiting.Complete();
        }
    }

    private static async Task HandOnAsync(BufferBlock<NumberedLine> waiting, TransformBlock<NumberedLine, LineReply> working, ReadAhead ahead, CancellationToken end)
    {
        try
        {
            await foreach (var line in waiting.ReceiveAllAsync(end))
            {
                await working.SendAsync(line, end);
                ahead.Left(line.Bytes);
            }
        }
        catch (OperationCanceledException)
        {
            // Its last line will say so.
        }

        working.Complete();
    }

    private async Task<(int Replies, int Problems)> SendAsync(TransformBlock<NumberedLine, LineReply> working, ReadAhead ahead, CancellationToken end)
    {
        var (replies, problems, unsent) = (0, 0, 0);
        try
        {
            await foreach (var reply in working.ReceiveAllAsync(end))
            {
                Write(reply.Json);
                replies++;
                problems += reply.IsAnswer ? 0 : 1;
                unsent += reply.Json.Length;
                if (unsent < SentAtOnce && working.OutputCount > 0)
                    continue;
                await ahead.SendAsync(http.Response.BodyWriter, end);
                unsent = 0;
            }
        }
        catch (OperationCanceledException)
        {
            // Its last line will say so.
        }

        return (replies, problems);
    }

    private void Write(ReadOnlySpan<byte> line)
    {
        http.Response.BodyWriter.Write(line);
        http.Response.BodyWriter.Write("\n"u8);
    }
}
