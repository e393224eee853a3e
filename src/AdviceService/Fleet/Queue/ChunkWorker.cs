using System.Buffers;
using System.Threading.Tasks.Dataflow;
using Advice.Evidence;
using AdviceService.Fleet.Scoring;
using AdviceService.Http;
using AdviceService.Json;
using NATS.Client.Core;
using NATS.Client.JetStream;

namespace AdviceService.Fleet.Queue;

/// <summary>Takes chunks from the queue and answers them one after another until it is told to stop. While one is being answered the next is
/// fetched and the replies to the last are handed over, so that no core waits for the queue. What it has taken by then is finished first.</summary>
/// <param name="queue">The queue.</param>
/// <param name="rules">The rule set.</param>
/// <param name="atOnce">How many lines of a chunk are worked on at once.</param>
/// <param name="patience">After what time an unfinished chunk is given to another worker.</param>
/// <param name="metrics">Shows how the queue stands.</param>
internal sealed class ChunkWorker(FleetQueue queue, IRuleBook rules, int atOnce, TimeSpan patience, QueueMetrics metrics)
{
    private const int MostTries = 3;
    private const int SignsOfLife = 3;

    private static readonly TimeSpan AskAgain = TimeSpan.FromSeconds(2);

    private (DateOnly Day, AdviceDesk Desk)? _desk;

    /// <summary>Works.</summary>
    public async Task RunAsync(CancellationToken stop)
    {
        var waiting = await queue.WorkAsync(patience, stop);
        var (next, handingOver) = (TakeAsync(waiting, stop), Task.CompletedTask);
        while (await next is { } taken)
        {
            next = TakeAsync(waiting, stop);
            var replies = taken.Tries > MostTries ? null : await HoldingAsync(taken, next, AnswerAsync(Packed.Read(taken.Data, Written.As.Chunk)));
            await handingOver;
            handingOver = HandOverAsync(taken, replies);
        }

        await handingOver;
    }

    /// <summary>The next chunk; null once it is told to stop.</summary>
    private async Task<TakenChunk?> TakeAsync(INatsJSConsumer waiting, CancellationToken stop)
    {
        while (!stop.IsCancellationRequested)
        {
            try
            {
                if (await waiting.NextAsync<byte[]>(opts: new NatsJSNextOpts { Expires = AskAgain }, cancellationToken: stop) is { Data: { } data, Metadata: { } about } message)
                {
                    if (about.NumDelivered > 1)
                        metrics.Again.Inc();
                    return TakenChunk.Of(message, data, about.NumDelivered);
                }
            }
            catch (OperationCanceledException) when (stop.IsCancellationRequested)
            {
                return null;
            }
            catch (Exception away) when (away is NatsException or OperationCanceledException)
            {
                await WaitAsync(away);
            }
        }

        return null;
    }

    /// <summary>Tells the queue that a chunk and the one after it are in hand, so that a slow machine does not lose them to another worker.</summary>
    private async Task<byte[]> HoldingAsync(TakenChunk taken, Task<TakenChunk?> next, Task<byte[]> work)
    {
        while (await Task.WhenAny(work, Task.Delay(patience / SignsOfLife)) != work)
        {
            try
            {
                await taken.Message.AckProgressAsync();
                if (next is { IsCompletedSuccessfully: true, Result: { } waiting })
                    await waiting.Message.AckProgressAsync();
            }
            catch (Exception away) when (away is NatsException or OperationCanceledException)
            {
                // What the queue does not hear it hands out again; whoever is second changes nothing.
            }
        }

        return await work;
    }

    /// <summary>Keeps the replies to a chunk, or the chunk itself where it was tried too often, and lets the queue forget it.</summary>
    private async Task HandOverAsync(TakenChunk chunk, byte[]? replies)
    {
        try
        {
            if (replies is null)
            {
                await queue.BuryAsync(chunk.Run, chunk.Index, chunk.Data, CancellationToken.None);
                await chunk.Message.AckTerminateAsync();
                metrics.Buried.Inc();
                return;
            }

            await queue.FinishAsync(chunk.Run, chunk.Index, rules.Revision, replies, CancellationToken.None);
            await chunk.Message.AckAsync(new AckOpts { DoubleAck = true });
            metrics.Finished.Inc();
        }
        catch (Exception away) when (away is NatsException or OperationCanceledException)
        {
            await WaitAsync(away);
        }
    }

    /// <summary>Gives the queue time to come back; what was not acknowledged comes again.</summary>
    private static Task WaitAsync(Exception away)
    {
        Console.Error.WriteLine($"The queue does not answer ({away.GetType().Name}); trying again.");
        return Task.Delay(AskAgain, CancellationToken.None);
    }

    private async Task<byte[]> AnswerAsync(Chunk chunk)
    {
        // A desk is dear to set up, and the chunks of a fleet share their day.
        if (_desk?.Day != chunk.AsOf)
            _desk = (chunk.AsOf, new AdviceDesk(rules, new DayClock(chunk.AsOf)));
        var working = new LineAnswers(_desk.Value.Desk, chunk.Detail, LineAnswers.OnStandardError).InOrder(atOnce, CancellationToken.None);
        var feeding = FeedAsync();
        var replies = new ArrayBufferWriter<byte>();
        await foreach (var reply in working.ReceiveAllAsync())
        {
            replies.Write(reply.Json);
            replies.Write("\n"u8);
        }

        await feeding;
        return replies.WrittenSpan.ToArray();

        async Task FeedAsync()
        {
            foreach (var line in chunk.Lines)
                await working.SendAsync(line);
            working.Complete();
        }
    }
}
