using System.Diagnostics;
using AdviceService.Tests.Verbs;

namespace AdviceService.Tests.Fleet.Queue;

/// <summary>A worker of one core in a process of its own.</summary>
internal sealed class WorkerProcess : IDisposable
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

    public static WorkerProcess Start(QueueServer server, params string[] args) =>
        new(Run.Start(["work", "--nats", server.Url, "--urls", "http://127.0.0.1:0", "--cores", "1", "--patience", $"{Patience.TotalSeconds}", .. args]));

    /// <summary>Waits until it takes chunks.</summary>
    public Task ReadyAsync() => _greeting;

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
}
