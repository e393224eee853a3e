using System.Text.Json;
using Advice.Evidence;
using AdviceService.Fleet.Queue;
using AdviceService.Tests.Fleet.Queue;
using AdviceService.Tests.Http;
using AdviceService.Tests.Verbs;
using Microsoft.Extensions.DependencyInjection;
using Prometheus;
using Xunit.Abstractions;

namespace AdviceService.Tests.Fleet;

/// <summary>A night with twenty thousand real profiles in which what can go wrong does: one reply for each line, the same bytes as in a quiet night.</summary>
[Collection(Served.ByHttp)]
public sealed class FleetNightTests(RunningService service, ITestOutputHelper output) : IDisposable
{
    private const int LinesOfAChunk = 200;
    private const int Chunks = RealFleet.Count / LinesOfAChunk;

    // What a worker has taken is not given to the other, however slow the machine.
    private static readonly TimeSpan VeryPatient = TimeSpan.FromMinutes(5);

    private static List<string>? _quietNight;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("night-");
    private readonly QueueServer _server = new();

    private IRuleBook Rules => service.Services.GetRequiredService<IRuleBook>();

    [SkippableFact]
    public async Task Score_KilledTwice_GoesOnAndGivesTheSameBytes()
    {
        var (fleet, scored) = (Path.Combine(_folder.FullName, "fleet.ndjson"), Path.Combine(_folder.FullName, "scored.ndjson"));
        await File.WriteAllTextAsync(fleet, RealFleet.Lines(Rules));
        foreach (var bytes in (int[])[1_500_000, 4_000_000])
        {
            using var doomed = Run.Start("score", fleet, scored, "--as-of", $"{FleetJob.Day:O}");
            while (!(File.Exists(scored + ".part") && new FileInfo(scored + ".part").Length >= bytes))
                await Task.Delay(10);
            doomed.Kill();
            await doomed.WaitForExitAsync();
            Assert.False(File.Exists(scored));
        }

        var (exitCode, _, _) = await Run.ToEndAsync("", "score", fleet, scored);

        Assert.Equal(0, exitCode);
        await AssertQuietNight(await File.ReadAllLinesAsync(scored), "score, killed twice");
    }

    [SkippableFact]
    public async Task Queue_WorkerKilledServerRestartedAnotherWorkerJoins_SameBytes()
    {
        const int Parts = 10;
        using var fleet = new InParts(RealFleet.Lines(Rules), RealFleet.Count / Parts);
        await using var queue = await FleetQueue.ConnectAsync(_server.Url, CancellationToken.None);
        var submitting = FleetJob.SubmitAsync(queue, "night", fleet.ReadAsync(CancellationToken.None), LinesOfAChunk);
        var let = await WorkerProcess.KillOneInTheMiddleAsync(_server, queue, "night", fleet, Parts / 2, Chunks / Parts);

        _server.Restart();
        var metrics = new QueueMetrics(Metrics.NewCustomRegistry());
        using var stop = new CancellationTokenSource();
        var heir = new ChunkWorker(queue, Rules, 1, WorkerProcess.Patience, metrics).RunAsync(stop.Token);
        fleet.Let((Parts / 2) - let + 1);
        await FleetJob.ResultAsync(queue, "night", Chunks / 2);
        using var second = WorkerProcess.Start(_server);
        await FleetJob.WaitingAsync(await queue.WorkAsync(WorkerProcess.Patience, CancellationToken.None), workers: 2);
        Assert.True(metrics.Finished.Value > 0, "The heir has answered nothing before the second worker joined.");
        fleet.Let(Parts / 2);
        await submitting;
        var collected = await FleetJob.CollectAsync(queue, "night");
        await second.FinishedOneAsync();
        await stop.CancelAsync();
        await heir;
        await second.StopAsync();

        await AssertQuietNight(collected, $"queue, worker killed, server restarted, second worker joined ({metrics.Finished.Value} of {Chunks} chunks by its heir)");
    }

    [SkippableFact]
    public async Task Queue_RuleSetsChangeDuringTheNight_EachReplyNamesItsRevisionAndIsWhole()
    {
        using var other = new OtherRevision();
        await using var queue = await FleetQueue.ConnectAsync(_server.Url, CancellationToken.None);
        using var old = WorkerProcess.Start(_server, VeryPatient);
        using var young = WorkerProcess.Start(_server, VeryPatient, "--rules", other.Folder);
        await FleetJob.WaitingAsync(await queue.WorkAsync(VeryPatient, CancellationToken.None), workers: 2);

        await SubmitAsync(queue, "change");
        var collected = await FleetJob.CollectAsync(queue, "change");
        await old.StopAsync();
        await young.StopAsync();

        var revisions = collected.Select(Revision).Where(revision => revision is not null).CountBy(revision => revision!).ToDictionary();
        Assert.Equal(2, revisions.Count);
        var younger = revisions.Keys.Single(revision => revision != Rules.Revision);
        await AssertQuietNight(
            [.. collected.Select(reply => reply.Replace(younger, Rules.Revision, StringComparison.Ordinal))],
            $"queue, two rule sets ({revisions[Rules.Revision]} replies by one, {revisions[younger]} by the other)");
    }

    public void Dispose()
    {
        _server.Dispose();
        _folder.Delete(recursive: true);
    }

    private static string? Revision(string reply) =>
        JsonDocument.Parse(reply).RootElement.TryGetProperty("triage", out var triage) ? triage.GetProperty("revision").GetString() : null;

    private Task<QueueJob> SubmitAsync(FleetQueue queue, string job) => FleetJob.SubmitAsync(queue, job, RealFleet.Lines(Rules), LinesOfAChunk);

    private async Task AssertQuietNight(IReadOnlyList<string> replies, string night)
    {
        _quietNight ??= await FleetJob.InOneProcessAsync(Rules, RealFleet.Lines(Rules));
        Assert.Equal(Enumerable.Range(1, RealFleet.Count), replies.Select(reply => JsonDocument.Parse(reply).RootElement.GetProperty("id").GetInt32()));
        Assert.Equal(_quietNight, replies);
        var problems = replies.Count(reply => JsonDocument.Parse(reply).RootElement.TryGetProperty("problem", out _));
        Assert.Equal(RealFleet.Count / RealFleet.EachUnreadable, problems);
        output.WriteLine($"{night}: {replies.Count} lines, {replies.Count - problems} answers, {problems} problems, the same bytes as in a quiet night");
    }
}
