using System.Text;
using Advice.Evidence;
using AdviceService.Fleet;
using AdviceService.Fleet.Queue;
using AdviceService.Fleet.Scoring;
using NATS.Client.JetStream;

namespace AdviceService.Tests.Fleet.Queue;

/// <summary>A fleet on its way through the queue, and what one process makes of it alone.</summary>
internal static class FleetJob
{
    /// <summary>The day on which the fleets of the tests are answered.</summary>
    public static readonly DateOnly Day = new(2026, 3, 1);

    private static readonly TimeSpan TooLong = TimeSpan.FromMinutes(10);

    public static Task<QueueJob> SubmitAsync(FleetQueue queue, string job, string lines, int linesOfAChunk) =>
        SubmitAsync(queue, job, FleetLines.Of(Stream(lines), isTable: false, CancellationToken.None), linesOfAChunk);

    public static Task<QueueJob> SubmitAsync(FleetQueue queue, string job, IAsyncEnumerable<NumberedLine> lines, int linesOfAChunk) =>
        new Submission(queue, job).RunAsync(lines, new QueueRun(null, LineDetail.Triage, Day), givenAsOf: true, linesOfAChunk, CancellationToken.None);

    public static async Task<List<string>> CollectAsync(FleetQueue queue, string job)
    {
        using var late = new CancellationTokenSource(TooLong);
        return await new AdviceService.Fleet.Queue.Collection(queue, job).ReadAsync(late.Token).Select(Encoding.UTF8.GetString).ToListAsync(late.Token);
    }

    /// <summary>Waits until a chunk was answered.</summary>
    public static async Task ResultAsync(FleetQueue queue, string job, int chunk)
    {
        using var late = new CancellationTokenSource(TooLong);
        while (await queue.RunAsync(job, late.Token) is not { } run || await queue.ResultAsync(run.Name, chunk, late.Token) is null)
            await Task.Delay(5, late.Token);
    }

    /// <summary>Waits until so many workers wait for a chunk: the next ones go to each of them.</summary>
    public static async Task WaitingAsync(INatsJSConsumer waiting, int workers)
    {
        using var late = new CancellationTokenSource(TooLong);
        while (waiting.Info.NumWaiting < workers)
        {
            await Task.Delay(5, late.Token);
            await waiting.RefreshAsync(late.Token);
        }
    }

    public static async Task<List<string>> InOneProcessAsync(IRuleBook rules, string lines)
    {
        var options = new ScoreOptions("", false, "", ScoreFormat.Ndjson, LineDetail.Triage, Shard.All, Day, Environment.ProcessorCount);
        return await new FleetReplies(rules, options, _ => { }).ReadAsync(Stream(lines), 0, CancellationToken.None).Select(Encoding.UTF8.GetString).ToListAsync();
    }

    private static MemoryStream Stream(string lines) => new(Encoding.UTF8.GetBytes(lines));
}
