using System.Buffers;
using System.Threading.Tasks.Dataflow;
using Advice.Evidence;
using AdviceService.Fleet.Scoring;
using AdviceService.Http;
using AdviceService.Json;
using NATS.Client.Core;
using NATS.Client.JetStream;

namespace AdviceService.Fleet.Queue;

/// <summary>Takes chunks from the queue, one at a time, until it is told to stop; the chunk in hand is finished first.</summary>
/// <param name="queue">The queue.</param>
/// <param name="rules">The rule set.</param>
/// <param name="atOnce">How many lines of a chunk are worked on at once.</param>
/// <param name="patience">After what time an unfinished chunk is given to another worker.</param>
/// <param name="metrics">Shows how the queue stands.</param>
internal sealed class ChunkWorker(FleetQueue queue, IRuleBook rules, int atOnce, TimeSpan patience, QueueMetrics metrics)
{
    private const int MostTries = 3;

    private static readonly TimeSpan AskAgain = TimeSpan.FromSeconds(2);

    private (DateOnly Day, AdviceDesk Desk)? _desk;

    /// <summary>Works.</summary>
    public async Task RunAsync(CancellationToken stop)
    {
        var waiting = await queue.WorkAsync(patience, stop);
        while (!stop.IsCancellationRequested)
        {
            try
            {
                if (await waiting.NextAsync<byte[]>(opts: new NatsJSNextOpts { Expires = AskAgain }, cancellationToken: stop) is { Data: { } data, Metadata: { } about } message)
                    await AnswerAsync(message, data, about);
            }
            catch (OperationCanceledException) when (stop.IsCancellationRequested)
            {
                return;
            }
            catch (Exception away) when (away is NatsException or OperationCanceledException)
            {
                // What was not acknowledged comes again.
                Console.Error.WriteLine($"The queue does not answer ({away.GetType().Name}); trying again.");
                await Task.Delay(AskAgain, CancellationToken.None);
            }
        }
    }

    private async Task AnswerAsync(INatsJSMsg<byte[]> message, byte[] data, NatsJSMsgMetadata about)
    {
        var parts = message.Subject.Split('.');
        var (job, index) = (parts[^2], int.Parse(parts[^1], System.Globalization.CultureInfo.InvariantCulture));
        metrics.Waiting.Set(about.NumPending);
        if (about.NumDelivered > 1)
            metrics.Again.Inc();
        if (about.NumDelivered > MostTries)
        {
            await queue.BuryAsync(job, index, data, CancellationToken.None);
            await message.AckTerminateAsync();
            metrics.Buried.Inc();
            return;
        }

        var replies = await AnswerAsync(Packed.Read(data, Written.As.Chunk));
        await queue.FinishAsync(job, index, rules.Revision, replies, CancellationToken.None);
        await message.AckAsync(new AckOpts { DoubleAck = true });
        metrics.Finished.Inc();
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
