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
        await queue._jetStream.CreateOrUpdateStreamAsync(
            new StreamConfig(Work, ["advice.work.*.*"])
            {
                Retention = StreamConfigRetention.Workqueue,
                Storage = StreamConfigStorage.File,
                DuplicateWindow = DuplicateWindow,
            },
            cancel);
        queue._results = await queue._jetStream.CreateOrUpdateStreamAsync(
            new StreamConfig(Results, ["advice.result.*.*", "advice.dead.*.*", "advice.total.*"])
            {
                Storage = StreamConfigStorage.File,
                MaxMsgsPerSubject = 1,
                AllowDirect = true,
                DuplicateWindow = DuplicateWindow,
            },
            cancel);
        return queue;
    }

    /// <summary>Puts a chunk into the queue; twice the same is one.</summary>
    public Task SubmitAsync(string job, int index, Chunk chunk, CancellationToken cancel) =>
        PublishAsync($"advice.work.{job}.{index}", $"{job}/{index}", Packed.Of(chunk, Written.As.Chunk), cancel);

    /// <summary>Says that all chunks of a job are in the queue.</summary>
    public Task SubmitAsync(string job, QueueJob total, CancellationToken cancel) => PublishAsync($"advice.total.{job}", null, Packed.Of(total, Written.As.QueueJob), cancel);

    /// <summary>Keeps the replies to a chunk, line by line. Twice by the same revision is one.</summary>
    public Task FinishAsync(string job, int index, string revision, byte[] replies, CancellationToken cancel) =>
        PublishAsync($"advice.result.{job}.{index}", $"{job}/{index}/{revision}", Packed.Of(replies), cancel);

    /// <summary>Keeps a chunk that nobody could answer.</summary>
    public Task BuryAsync(string job, int index, byte[] message, CancellationToken cancel) =>
        PublishAsync($"advice.dead.{job}.{index}", $"{job}/{index}/dead", message, cancel);

    /// <summary>The chunks that wait, each for one worker at a time. One that was not acknowledged in time comes again.</summary>
    public async Task<INatsJSConsumer> WorkAsync(TimeSpan patience, CancellationToken cancel) => await _jetStream.CreateOrUpdateConsumerAsync(
        Work, new ConsumerConfig(Workers) { AckPolicy = ConsumerConfigAckPolicy.Explicit, AckWait = patience, MaxDeliver = -1 }, cancel);

    /// <summary>The total of a job; null until it was submitted as a whole.</summary>
    public async Task<QueueJob?> TotalAsync(string job, CancellationToken cancel) =>
        await LastAsync($"advice.total.{job}", cancel) is { } total ? Packed.Read(total, Written.As.QueueJob) : null;

    /// <summary>The replies to a chunk; null until there are some.</summary>
    public async Task<byte[]?> ResultAsync(string job, int index, CancellationToken cancel) =>
        await LastAsync($"advice.result.{job}.{index}", cancel) is { } replies ? Packed.Read(replies) : null;

    /// <summary>A chunk that nobody could answer; null where it is not known as such.</summary>
    public async Task<Chunk?> DeadAsync(string job, int index, CancellationToken cancel) =>
        await LastAsync($"advice.dead.{job}.{index}", cancel) is { } chunk ? Packed.Read(chunk, Written.As.Chunk) : null;

    /// <summary>Drops what is kept of a job.</summary>
    public async Task ForgetAsync(string job, CancellationToken cancel)
    {
        foreach (var subject in (string[])[$"advice.result.{job}.*", $"advice.dead.{job}.*", $"advice.total.{job}"])
            await _jetStream.PurgeStreamAsync(Results, new StreamPurgeRequest { Filter = subject }, cancel);
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _connection.DisposeAsync();

    private async Task PublishAsync(string subject, string? messageId, byte[] message, CancellationToken cancel)
    {
        var acknowledged = await _jetStream.PublishAsync(subject, message, opts: new NatsJSPubOpts { MsgId = messageId, RetryAttempts = 30, RetryWaitBetweenAttempts = TimeSpan.FromSeconds(1) }, cancellationToken: cancel);
        // A duplicate is what a second try makes of a first that went well.
        if (!acknowledged.Duplicate)
            acknowledged.EnsureSuccess();
    }

    private async Task<byte[]?> LastAsync(string subject, CancellationToken cancel)
    {
        try
        {
            return (await _results.GetDirectAsync<byte[]>(new StreamMsgGetRequest { LastBySubj = subject }, cancellationToken: cancel)).Data;
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
