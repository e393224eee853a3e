using System.Text.Json;
using Advice.Evidence;
using AdviceService.Fleet.Queue;
using AdviceService.Tests.Http;
using AdviceService.Tests.Verbs;
using Microsoft.Extensions.DependencyInjection;
using NATS.Client.JetStream;
using Prometheus;

namespace AdviceService.Tests.Fleet.Queue;

/// <summary>What the queue promises when workers die, the server restarts and rule sets change: one reply for each line, nothing lost.</summary>
[Collection(Served.ByHttp)]
public sealed class FleetQueueTests(RunningService service) : IDisposable
{
    private const int LinesOfAChunk = 20;

    // Not a multiple of the two seconds for which a worker asks: the server forgets a try that it hands to a worker which has just stopped asking.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(3);

    // One for each test: a chunk that came late to one test would be handed to the next.
    private readonly QueueServer _server = new();

    private IRuleBook Rules => service.Services.GetRequiredService<IRuleBook>();

    [SkippableFact]
    public async Task Queue_WorkerKilledAndServerRestarted_SameBytesAsInOneProcess()
    {
        const int Count = 2000;
        await using var queue = await FleetQueue.ConnectAsync(_server.Url, CancellationToken.None);
        await SubmitAsync(queue, "killed", Count);
        using var doomed = WorkerProcess.Start(_server);
        await FleetJob.ResultAsync(queue, "killed", 0);
        await doomed.KillAsync();
        Assert.Null(await queue.ResultAsync("killed", (Count / LinesOfAChunk) - 1, CancellationToken.None));

        _server.Restart();
        using var heir = WorkerProcess.Start(_server);
        var collected = await FleetJob.CollectAsync(queue, "killed");
        await heir.StopAsync();

        Assert.Equal(await InOneProcessAsync(Count), collected);
    }

    [SkippableFact]
    public async Task Queue_TwoRuleSetsDuringAChange_OneReplyPerLineThatNamesItsRevision()
    {
        // So many that neither worker is done with all before the other has read its first text, which takes longest.
        const int Count = 1_600;
        using var other = new OtherRevision();
        await using var queue = await FleetQueue.ConnectAsync(_server.Url, CancellationToken.None);
        using var old = WorkerProcess.Start(_server);
        using var young = WorkerProcess.Start(_server, "--rules", other.Folder);
        await Task.WhenAll(old.ReadyAsync(), young.ReadyAsync());

        await SubmitAsync(queue, "change", Count);
        var collected = await FleetJob.CollectAsync(queue, "change");
        await old.StopAsync();
        await young.StopAsync();

        Assert.Equal(Enumerable.Range(1, Count), collected.Select(reply => JsonDocument.Parse(reply).RootElement.GetProperty("line").GetInt32()));
        var revisions = collected.Select(reply => JsonDocument.Parse(reply).RootElement).Where(reply => reply.TryGetProperty("triage", out _))
            .Select(reply => reply.GetProperty("triage").GetProperty("revision").GetString()).Distinct().ToList();
        Assert.Equal(2, revisions.Count);
        Assert.Contains(Rules.Revision, revisions);
    }

    [SkippableFact]
    public async Task Queue_ChunkThatThreeWorkersDidNotFinish_ProblemForEachOfItsLines()
    {
        await using var queue = await FleetQueue.ConnectAsync(_server.Url, CancellationToken.None);
        await SubmitAsync(queue, "dead", 5);
        var waiting = await queue.WorkAsync(Patience, CancellationToken.None);
        for (var tried = 0; tried < 3; tried++)
            Assert.NotNull(await waiting.NextAsync<byte[]>(opts: new NatsJSNextOpts { Expires = TimeSpan.FromSeconds(20) }));

        using var stop = new CancellationTokenSource();
        var working = new ChunkWorker(queue, Rules, 1, Patience, new QueueMetrics(Metrics.NewCustomRegistry())).RunAsync(stop.Token);
        var collected = await FleetJob.CollectAsync(queue, "dead");
        await stop.CancelAsync();
        await working;

        Assert.Equal(Enumerable.Range(1, 5).Select(i => $"{i} {i} internal"), collected.Select(Described));
    }

    [SkippableFact]
    public async Task Queue_SubmittedTwice_IsAnsweredOnce()
    {
        await using var queue = await FleetQueue.ConnectAsync(_server.Url, CancellationToken.None);
        await SubmitAsync(queue, "twice", 60);
        await SubmitAsync(queue, "twice", 60);

        var metrics = new QueueMetrics(Metrics.NewCustomRegistry());
        using var stop = new CancellationTokenSource();
        var working = new ChunkWorker(queue, Rules, 2, Patience, metrics).RunAsync(stop.Token);
        var collected = await FleetJob.CollectAsync(queue, "twice");
        await stop.CancelAsync();
        await working;

        Assert.Equal(await InOneProcessAsync(60), collected);
        // A chunk that a slow machine did not answer in time came again; one that was submitted again did not.
        Assert.InRange(metrics.Finished.Value, 60 / LinesOfAChunk, (60 / LinesOfAChunk) + metrics.Again.Value);
        await queue.ForgetAsync("twice", CancellationToken.None);
        Assert.Null(await queue.TotalAsync("twice", CancellationToken.None));
    }

    [SkippableFact]
    public async Task Queue_TableInAndOut_SameTableAsScored()
    {
        var folder = Directory.CreateTempSubdirectory("queue-");
        string In(string name) => Path.Combine(folder.FullName, name);
        await File.WriteAllTextAsync(In("fleet.csv"), SmallFleet.Table(30));
        using var worker = WorkerProcess.Start(_server);

        var submitted = await Run.ToEndAsync("", "submit", "table", In("fleet.csv"), "--as-of", $"{FleetJob.Day:O}", "--nats", _server.Url);
        var collected = await Run.ToEndAsync("", "collect", "table", In("collected.csv"), "--nats", _server.Url);
        var scored = await Run.ToEndAsync("", "score", In("fleet.csv"), In("scored.csv"), "--as-of", $"{FleetJob.Day:O}");
        await worker.StopAsync();

        Assert.Equal((0, 0, 0), (submitted.ExitCode, collected.ExitCode, scored.ExitCode));
        Assert.Equal(await File.ReadAllTextAsync(In("scored.csv")), await File.ReadAllTextAsync(In("collected.csv")));
        folder.Delete(recursive: true);
    }

    public void Dispose() => _server.Dispose();

    private static string Described(string reply)
    {
        var json = JsonDocument.Parse(reply).RootElement;
        return $"{json.GetProperty("id")} {json.GetProperty("line")} {json.GetProperty("problem").GetProperty("errors")[0].GetProperty("code")}";
    }

    private static Task<QueueJob> SubmitAsync(FleetQueue queue, string job, int count) => FleetJob.SubmitAsync(queue, job, SmallFleet.Lines(count), LinesOfAChunk);

    private Task<List<string>> InOneProcessAsync(int count) => FleetJob.InOneProcessAsync(Rules, SmallFleet.Lines(count));
}
