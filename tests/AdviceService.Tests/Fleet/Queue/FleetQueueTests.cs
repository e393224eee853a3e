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

    // What a worker has taken is not given to the other, however slow the machine.
    private static readonly TimeSpan VeryPatient = TimeSpan.FromMinutes(5);

    // One for each test: a chunk that came late to one test would be handed to the next.
    private readonly QueueServer _server = new();

    private IRuleBook Rules => service.Services.GetRequiredService<IRuleBook>();

    [SkippableFact]
    public async Task Queue_WorkerKilledAndServerRestarted_SameBytesAsInOneProcess()
    {
        const int Count = 2000;
        const int Parts = 5;
        using var fleet = new InParts(SmallFleet.Lines(Count), Count / Parts);
        await using var queue = await FleetQueue.ConnectAsync(_server.Url, CancellationToken.None);
        var submitting = FleetJob.SubmitAsync(queue, "killed", fleet.ReadAsync(CancellationToken.None), LinesOfAChunk);
        var let = await WorkerProcess.KillOneInTheMiddleAsync(_server, queue, "killed", fleet, Parts, Count / Parts / LinesOfAChunk);

        _server.Restart();
        using var heir = WorkerProcess.Start(_server);
        fleet.Let(Parts - let + 1);
        await submitting;
        var collected = await FleetJob.CollectAsync(queue, "killed");
        await heir.StopAsync();

        Assert.Equal(await InOneProcessAsync(Count), collected);
    }

    [SkippableFact]
    public async Task Queue_TwoRuleSetsDuringAChange_OneReplyPerLineThatNamesItsRevision()
    {
        const int Count = 400;
        using var other = new OtherRevision();
        await using var queue = await FleetQueue.ConnectAsync(_server.Url, CancellationToken.None);
        using var old = WorkerProcess.Start(_server, VeryPatient);
        using var young = WorkerProcess.Start(_server, VeryPatient, "--rules", other.Folder);
        await FleetJob.WaitingAsync(await queue.WorkAsync(VeryPatient, CancellationToken.None), workers: 2);

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
    }

    [SkippableFact]
    public async Task Queue_NameOfACollectedJob_MayBeUsedAgain()
    {
        await using var queue = await FleetQueue.ConnectAsync(_server.Url, CancellationToken.None);
        using var stop = new CancellationTokenSource();
        var working = new ChunkWorker(queue, Rules, 2, Patience, new QueueMetrics(Metrics.NewCustomRegistry())).RunAsync(stop.Token);

        foreach (var count in (int[])[30, 50])
        {
            await SubmitAsync(queue, "again", count);
            Assert.Equal(await InOneProcessAsync(count), await FleetJob.CollectAsync(queue, "again"));
            await queue.ForgetAsync("again", CancellationToken.None);
            Assert.Null(await queue.RunAsync("again", CancellationToken.None));
        }

        await stop.CancelAsync();
        await working;
    }

    [SkippableFact]
    public async Task Queue_OtherFleetUnderTheNameOfAJob_IsRefused()
    {
        var folder = Directory.CreateTempSubdirectory("queue-");
        string In(string name) => Path.Combine(folder.FullName, name);
        await File.WriteAllTextAsync(In("one.ndjson"), SmallFleet.Lines(5));
        await File.WriteAllTextAsync(In("other.ndjson"), SmallFleet.Lines(6));

        var one = await Run.ToEndAsync("", "submit", "same", In("one.ndjson"), "--detail", "full", "--nats", _server.Url);
        var again = await Run.ToEndAsync("", "submit", "same", In("one.ndjson"), "--detail", "full", "--nats", _server.Url);
        var other = await Run.ToEndAsync("", "submit", "same", In("other.ndjson"), "--detail", "full", "--nats", _server.Url);
        var table = await Run.ToEndAsync("", "collect", "same", In("out.csv"), "--nats", _server.Url);

        Assert.Equal((0, 0, 1, 1), (one.ExitCode, again.ExitCode, other.ExitCode, table.ExitCode));
        Assert.Contains("in the queue for another fleet", other.Error, StringComparison.Ordinal);
        Assert.Contains("no room for full answers", table.Error, StringComparison.Ordinal);
        folder.Delete(recursive: true);
    }

    [SkippableFact]
    public async Task Metrics_WhileNobodyTakesChunks_SayHowManyWait()
    {
        await using var queue = await FleetQueue.ConnectAsync(_server.Url, CancellationToken.None);
        var registry = Metrics.NewCustomRegistry();
        new QueueMetrics(registry).Follow(queue);
        var waiting = await queue.WorkAsync(TimeSpan.FromMinutes(5), CancellationToken.None);
        await SubmitAsync(queue, "lag", 60);
        Assert.NotNull(await waiting.NextAsync<byte[]>());

        using var text = new MemoryStream();
        await registry.CollectAndExportAsTextAsync(text);

        var lines = System.Text.Encoding.UTF8.GetString(text.ToArray()).Split('\n');
        Assert.Contains("advice_queue_waiting_chunks 2", lines);
        Assert.Contains("advice_queue_taken_chunks 1", lines);
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
