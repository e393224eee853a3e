using System.Diagnostics;
using System.Globalization;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;
using AdviceService.Tests.Fleet;
using AdviceService.Tests.Verbs;

namespace AdviceService.Tests.Http.Batch;

public partial class SlowReaderTests
{
    /// <summary>The answers are some hundred times what the sockets hold; a service that did not wait for its reader would keep them.</summary>
    [Fact]
    public async Task Batch_ReaderTakesLittleAtATime_IsSentNoFasterAndMemoryStaysFlat()
    {
        var body = Encoding.UTF8.GetBytes(SmallFleet.Lines(300_000));
        var (process, address, _) = await Run.ServeAsync();
        using var started = process;
        using var client = new TcpClient { ReceiveBufferSize = 256 * 1024 };
        await client.ConnectAsync(address.Host, address.Port);
        var stream = client.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(
            $"POST /v1/advice/batch HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/x-ndjson\r\nContent-Length: {body.Length}\r\n\r\n"));
        var sent = 0;
        var sending = Task.Run(async () =>
        {
            for (; sent < body.Length; sent += 1000)
                await stream.WriteAsync(body.AsMemory(sent, Math.Min(1000, body.Length - sent)));
        });

        var taken = await TakeAsync(stream, TimeSpan.FromSeconds(12));
        var early = PeakMebibytes(process);
        taken += await TakeAsync(stream, TimeSpan.FromSeconds(12));
        var late = PeakMebibytes(process);
        process.Kill();
        await Assert.ThrowsAnyAsync<Exception>(() => sending);

        Assert.True(taken > 1_000_000, $"{taken} bytes of answers");
        Assert.True(sent < body.Length / 2, $"{sent} of {body.Length} bytes sent");
        Assert.True(late - early < 96, $"{early} MiB, later {late} MiB");
    }

    private static async Task<int> TakeAsync(NetworkStream stream, TimeSpan time)
    {
        var (taken, some, clock) = (0, new byte[32 * 1024], Stopwatch.StartNew());
        while (clock.Elapsed < time)
        {
            taken += await stream.ReadAsync(some);
            await Task.Delay(100);
        }

        return taken;
    }

    private static double PeakMebibytes(Process process) => double.Parse(
        Peak().Match(File.ReadAllText($"/proc/{process.Id}/status")).Groups[1].Value, CultureInfo.InvariantCulture) / 1024;

    [GeneratedRegex(@"VmHWM:\s+(\d+)")]
    private static partial Regex Peak();
}
