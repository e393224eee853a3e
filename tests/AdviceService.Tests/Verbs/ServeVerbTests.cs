using System.Diagnostics;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;

namespace AdviceService.Tests.Verbs;

public partial class ServeVerbTests
{
    private const string Canary = "zebrafinch";

    [Fact]
    public async Task Serve_UntilTold_GreetsAnswersLogsNoComplaintAndEndsWell()
    {
        using var process = Run.Start("--urls", "http://127.0.0.1:0");
        var errors = process.StandardError.ReadToEndAsync();
        var greeting = await process.StandardOutput.ReadLineAsync();
        var address = Address().Match(greeting!).Value;
        using var client = new HttpClient { BaseAddress = new Uri(address) };

        foreach (var body in new[] { $$"""{"vehicle":{},"complaint":"{{Canary}} brakes squeal"}""", $$"""{"vehicle":{},"{{Canary}}":1}""", $$"""{"complaint":"{{Canary}}""" })
            await client.PostAsync("/v1/advice", new StringContent(body, Encoding.UTF8, "application/json"));
        using var stop = Process.Start("kill", ["-TERM", $"{process.Id}"]);
        await process.WaitForExitAsync().WaitAsync(TimeSpan.FromMinutes(1));

        Assert.Equal(0, process.ExitCode);
        var log = await errors;
        Assert.DoesNotContain(Canary, log, StringComparison.Ordinal);
        Assert.Contains("\"StatusCode\":400", log, StringComparison.Ordinal);
        Assert.DoesNotContain("\"StatusCode\":200", log, StringComparison.Ordinal);
    }

    /// <summary>The caller has not sent its last line yet, so that the batch cannot be complete.</summary>
    [Fact]
    public async Task Serve_ToldToEndWithinABatch_AnswersWhatItReadAndSaysThatItIsNotComplete()
    {
        const int Lines = 20;
        using var process = Run.Start("--urls", "http://127.0.0.1:0");
        _ = process.StandardError.ReadToEndAsync();
        var address = new Uri(Address().Match((await process.StandardOutput.ReadLineAsync())!).Value);
        using var client = new TcpClient(address.Host, address.Port);
        var stream = client.GetStream();
        var lines = string.Concat(Enumerable.Range(1, Lines).Select(id => $$"""{"id":{{id}},"vehicle":{},"complaint":"brakes squeal"}""" + "\n"));
        await stream.WriteAsync(Encoding.ASCII.GetBytes(
            $"POST /v1/advice/batch?detail=triage HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/x-ndjson\r\nContent-Length: {lines.Length + 1}\r\n\r\n{lines}"));
        using var reader = new StreamReader(stream);
        while (!(await reader.ReadLineAsync())!.Contains("\"line\":1,", StringComparison.Ordinal))
        {
        }

        using var stop = Process.Start("kill", ["-TERM", $"{process.Id}"]);
        var rest = await reader.ReadToEndAsync().WaitAsync(TimeSpan.FromMinutes(1));
        await process.WaitForExitAsync().WaitAsync(TimeSpan.FromMinutes(1));

        Assert.Equal(0, process.ExitCode);
        var replies = 1 + Regex.Count(rest, "\"triage\"");
        Assert.Contains($$$"""{"end":{"lines":{{{replies}}},"answers":{{{replies}}},"problems":0,"complete":false}}""", rest, StringComparison.Ordinal);
    }

    [GeneratedRegex("http://[0-9.:]+")]
    private static partial Regex Address();
}
