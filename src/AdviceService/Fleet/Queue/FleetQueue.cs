using AdviceService.Json;
using NATS.Client.Core;
using NATS.Client.JetStream;
using NATS.Client.JetStream.Models;

namespace AdviceService.Fleet.Queue;

/// <summary>The work queue of fleets on JetStream: chunks wait until a worker has acknowledged them; results, totals and chunks that nobody
/// could answer stay until they are collected. The last result of a chunk counts, so that a chunk answered twice is counted once.</summary>
internal sealed class FleetQueue : IAsyncDisposable
{
    private const string Work = "ADVICE_WORK";
    private const string Results = "ADVICE_RESULTS";
    private const string Workers = "workers";

    private const int Tries = 30;
    private const int WrongLastSequence = 10071;

    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);

    private static readonly TimeSpan Silence = TimeSpan.FromSeconds(5);

    private static readonly TimeSpan DuplicateWindow = TimeSpan.FromHours(1);

    private readonly NatsConnection _connection;
    private readonly NatsJSContext _jetStream;
    private INatsJSStream _results = null!;

    private FleetQueue(string url)
    {
        _connection = new NatsConnection(new NatsOpts { Url = url, Name = "advice", MaxReconnectRetry = -1, RetryOnInitialConnect = true });
        _jetStream = new NatsJSContext(_connection);
    }

    /// <summary>Connects, and makes the streams where they are missing.</summary>
    public static async Task<FleetQueue> ConnectAsync(string url, CancellationToken cancel)
    {
        var queue = new FleetQueue(url);
        await using var silence = new Timer(_ => Console.Error.WriteLine("No queue answers yet; trying on."), null, Silence, Timeout.InfiniteTimeSpan);
        await queue._jetStream.CreateOrUpdateStreamAsync(
            new StreamConfig(Work, ["advice.work.*.*"])
            {
                Retention = StreamConfigRetention.Workqueue,
                Storage = StreamConfigStorage.File,
                DuplicateWindow = DuplicateWindow,
            },
            cancel);
        queue._results = await queue._jetStream.CreateOrUpdateStreamAsync(
            new StreamConfig(Results, ["advice.run.*", "advice.result.*.*", "advice.dead.*.*", "advice.total.*"])
            {
                Storage = StreamConfigStorage.File,
                MaxMsgsPerSubject = 1,
                AllowDirect = true,
                DuplicateWindow = DuplicateWindow,
            },
            cancel);
        return queue;
    }

    /// <summary>Begins a job; one that has begun and was not collected goes on.</summary>
    /// <returns>The run that counts.</returns>
    public async Task<QueueRun> BeginAsync(string job, QueueRun run, CancellationToken cancel)
    {
        // Two that begin the same job at once must not both be first.
        var first = new NatsJSPubOpts { ExpectedLastSubjectSequence = 0, RetryAttempts = Tries, RetryWaitBetweenAttempts = Pause };
        while (true)
        {
            if (await RunAsync(job, cancel) is { } begun)
                return begun;
            var acknowledged = await _jetStream.PublishAsync($"advice.run.{job}", Packed.Of(run, Written.As.QueueRun), opts: first, cancellationToken: cancel);
            if (acknowledged.Error is { ErrCode: not WrongLastSequence })
                acknowledged.EnsureSuccess();
        }
    }

    /// <summary>The run of a job; null before it has begun and once it was collected.</summary>
    public async Task<QueueRun?> RunAsync(string job, CancellationToken cancel) =>
        await LastMessageAsync($"advice.run.{job}", cancel) is { Data: { } run, Headers: { } about }
            ? Packed.Read(run, Written.As.QueueRun) with { Name = $"{job}~{about["Nats-Sequence"]}" } : null;

    /// <summary>Puts a chunk into the queue; twice the same is one.</summary>
    public Task SubmitAsync(QueueRun run, int index, Chunk chunk, CancellationToken cancel) =>
        PublishAsync($"advice.work.{run.Name}.{index}", $"{run.Name}/{index}", Packed.Of(chunk, Written.As.Chunk), cancel);

    /// <summary>Says that all chunks of a run are in the queue.</summary>
    public Task SubmitAsync(QueueRun run, QueueJob total, CancellationToken cancel) =>
        PublishAsync($"advice.total.{run.Name}", null, Packed.Of(total, Written.As.QueueJob), cancel);

    /// <summary>Keeps the replies to a chunk, line by line. Twice by the same revision is one.</summary>
    public Task FinishAsync(string run, int index, string revision, byte[] replies, CancellationToken cancel) =>
        PublishAsync($"advice.result.{run}.{index}", $"{run}/{index}/{revision}", Packed.Of(replies), cancel);

    /// <summary>Keeps a chunk that nobody could answer.</summary>
    public Task BuryAsync(string run, int index, byte[] message, CancellationToken cancel) =>
        PublishAsync($"advice.dead.{run}.{index}", $"{run}/{index}/dead", message, cancel);

    /// <summary>The chunks that wait, each for one worker at a time. One that was not acknowledged in time comes again.</summary>
    public async Task<INatsJSConsumer> WorkAsync(TimeSpan patience, CancellationToken cancel) => await _jetStream.CreateOrUpdateConsumerAsync(
        Work, new ConsumerConfig(Workers) { AckPolicy = ConsumerConfigAckPolicy.Explicit, AckWait = patience, MaxDeliver = -1 }, cancel);

    /// <summary>How many chunks wait for a worker and how many one has taken and not finished; null where the queue does not say.</summary>
    public async Task<(long Waiting, long Taken)?> LagAsync(CancellationToken cancel)
    {
        try
        {
            var info = (await _jetStream.GetConsumerAsync(Work, Workers, cancel)).Info;
            return ((long)info.NumPending, info.NumAckPending);
        }
        catch (NatsException)
        {
            return null;
        }
    }

    /// <summary>The total of a run; null until it was submitted as a whole.</summary>
    public async Task<QueueJob?> TotalAsync(string run, CancellationToken cancel) =>
        await LastAsync($"advice.total.{run}", cancel) is { } total ? Packed.Read(total, Written.As.QueueJob) : null;

    /// <summary>The replies to a chunk; null until there are some.</summary>
    public async Task<byte[]?> ResultAsync(string run, int index, CancellationToken cancel) =>
        await LastAsync($"advice.result.{run}.{index}", cancel) is { } replies ? Packed.Read(replies) : null;

    /// <summary>A chunk that nobody could answer; null where it is not known as such.</summary>
    public async Task<Chunk?> DeadAsync(string run, int index, CancellationToken cancel) =>
        await LastAsync($"advice.dead.{run}.{index}", cancel) is { } chunk ? Packed.Read(chunk, Written.As.Chunk) : null;

    /// <summary>Drops what is kept of a job. Its name is free at once, whatever may still be on its way.</summary>
    public async Task ForgetAsync(string job, CancellationToken cancel)
    {
        if (await RunAsync(job, cancel) is not { Name: var run })
            return;
        foreach (var subject in (string[])[$"advice.run.{job}", $"advice.result.{run}.*", $"advice.dead.{run}.*", $"advice.total.{run}"])
            await _jetStream.PurgeStreamAsync(Results, new StreamPurgeRequest { Filter = subject }, cancel);
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _connection.DisposeAsync();

    private async Task PublishAsync(string subject, string? messageId, byte[] message, CancellationToken cancel)
    {
        var acknowledged = await _jetStream.PublishAsync(subject, message, opts: new NatsJSPubOpts { MsgId = messageId, RetryAttempts = Tries, RetryWaitBetweenAttempts = Pause }, cancellationToken: cancel);
        // A duplicate is what a second try makes of a first that went well.
        if (!acknowledged.Duplicate)
            acknowledged.EnsureSuccess();
    }

    private async Task<byte[]?> LastAsync(string subject, CancellationToken cancel) => (await LastMessageAsync(subject, cancel))?.Data;

    private async Task<NatsMsg<byte[]>?> LastMessageAsync(string subject, CancellationToken cancel)
    {
        try
        {
            return await _results.GetDirectAsync<byte[]>(new StreamMsgGetRequest { LastBySubj = subject }, cancellationToken: cancel);
        }
        catch (NatsJSApiException missing) when (missing.Error.Code == 404)
        {
            return null;
        }
        catch (Exception away) when (away is NatsNoRespondersException or NatsNoReplyException)
        {
            // The server restarts; whoever asks will ask again.
            return null;
        }
    }
}
