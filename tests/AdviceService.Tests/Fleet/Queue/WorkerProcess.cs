using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using AdviceService.Fleet.Queue;
using AdviceService.Tests.Verbs;

namespace AdviceService.Tests.Fleet.Queue;

/// <summary>A worker of one core in a process of its own.</summary>
internal sealed partial class WorkerProcess : IDisposable
{
    /// <summary>After what time its unfinished chunk is given to another.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    private readonly Process _process;
    private readonly Task<string?> _greeting;

    private WorkerProcess(Process process)
    {
        _process = process;
        _greeting = process.StandardOutput.ReadLineAsync();
        _ = process.StandardError.ReadToEndAsync();
    }

    public static WorkerProcess Start(QueueServer server, params string[] args) => Start(server, Patience, args);

    public static WorkerProcess Start(QueueServer server, TimeSpan patience, params string[] args) =>
        new(Run.Start(["work", "--nats", server.Url, "--urls", "http://127.0.0.1:0", "--cores", "1", "--patience", $"{patience.TotalSeconds}", .. args]));

    /// <summary>Kills workers, each once it has answered the first chunk of a part, until one dies with a chunk in hand.</summary>
    /// <returns>How many parts were let in for that.</returns>
    public static async Task<int> KillOneInTheMiddleAsync(QueueServer server, FleetQueue queue, string job, InParts fleet, int parts, int chunksOfAPart)
    {
        var waiting = await queue.WorkAsync(Patience, CancellationToken.None);
        for (var part = 0; part < parts; part++)
        {
            fleet.Let(1);
            using var doomed = Start(server);
            await FleetJob.ResultAsync(queue, job, part * chunksOfAPart);
            await doomed.KillAsync();
            await waiting.RefreshAsync();
            if (waiting.Info.NumAckPending > 0)
                return part + 1;
        }

        throw new InvalidOperationException("No worker died with a chunk in hand.");
    }

    /// <summary>Waits until it has finished a chunk.</summary>
    public async Task FinishedOneAsync()
    {
        using var client = new HttpClient();
        var metrics = new Uri(Address().Match((await _greeting)!).Value + "/metrics");
        while (double.Parse(Finished().Match(await client.GetStringAsync(metrics)).Groups[1].Value, CultureInfo.InvariantCulture) < 1)
            await Task.Delay(20);
    }

    /// <summary>Ends it without warning.</summary>
    public Task KillAsync()
    {
        _process.Kill();
        return _process.WaitForExitAsync();
    }

    /// <summary>Asks it to end and expects that it does so well.</summary>
    public async Task StopAsync()
    {
        using var stop = Process.Start("kill", ["-TERM", $"{_process.Id}"]);
        await _process.WaitForExitAsync().WaitAsync(TimeSpan.FromMinutes(1));
        Assert.Equal(0, _process.ExitCode);
    }

    /// <summary>Ends it too where a test failed half-way.</summary>
    public void Dispose()
    {
        if (!_process.HasExited)
            _process.Kill();
        _process.Dispose();
    }

    [GeneratedRegex("http://[0-9.]+:[0-9]+")]
    private static partial Regex Address();

    [GeneratedRegex("^advice_queue_finished_chunks_total ([0-9]+)", RegexOptions.Multiline)]
    private static partial Regex Finished();
}
