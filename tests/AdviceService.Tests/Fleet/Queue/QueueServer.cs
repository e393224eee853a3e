using System.Diagnostics;
using System.Net.Sockets;

namespace AdviceService.Tests.Fleet.Queue;

/// <summary>A NATS server with JetStream of this test run's own. Without the program the tests skip, or fail where REQUIRE_QUEUE is set.</summary>
public sealed class QueueServer : IDisposable
{
    private readonly DirectoryInfo _store = Directory.CreateTempSubdirectory("queue-");
    private readonly int _port = Port.Free();
    private Process? _server;

    /// <summary>Its address; started at the first call.</summary>
    public string Url
    {
        get
        {
            Skip.If(Program is null && Environment.GetEnvironmentVariable("REQUIRE_QUEUE") is null, "There is no nats-server.");
            if (_server is null)
                Start();
            return $"nats://127.0.0.1:{_port}";
        }
    }

    private static string? Program { get; } = Installed.Find("nats-server");

    /// <summary>Kills it without warning and starts it again with what it had stored.</summary>
    public void Restart()
    {
        Stop();
        Start();
    }

    public void Dispose()
    {
        Stop();
        _store.Delete(recursive: true);
    }

    private void Start()
    {
        _server = Process.Start(new ProcessStartInfo(Program!, ["-js", "-sd", _store.FullName, "-a", "127.0.0.1", "-p", $"{_port}", "-l", Path.Combine(_store.FullName, "log")]))!;
        SpinWait.SpinUntil(
            () =>
            {
                try
                {
                    using var client = new TcpClient("127.0.0.1", _port);
                    return true;
                }
                catch (SocketException)
                {
                    Thread.Sleep(20);
                    return false;
                }
            },
            TimeSpan.FromSeconds(30));
    }

    private void Stop()
    {
        _server?.Kill();
        _server?.WaitForExit();
        _server?.Dispose();
    }
}
