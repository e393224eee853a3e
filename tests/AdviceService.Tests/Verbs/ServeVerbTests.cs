using System.Diagnostics;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;

namespace AdviceService.Tests.Verbs;

public class ServeVerbTests
{
    private const string Canary = "zebrafinch";

    /// <summary>Whatever a caller may write into, right or wrong; each holds the canary.</summary>
    private static readonly (string Path, string Body)[] Written =
    [
        ("/v1/advice", $$"""{"vehicle":{},"complaint":"{{Canary}} brakes squeal"}"""),
        ("/v1/advice", $$"""{"vehicle":{},"{{Canary}}":1}"""),
        ("/v1/advice", $$"""{"complaint":"{{Canary}}"""),
        ("/v1/advice", $$"""{"vehicle":{"fuel":"{{Canary}}"},"troubleCodes":["{{Canary}}"],"unsure":["{{Canary}}"],"asOf":"{{Canary}}"}"""),
        ("/v1/advice/batch", $$"""{"id":"{{Canary}}","vehicle":{},"complaint":"{{Canary}}"}"""),
        ("/v1/intake", $$"""{"text":"{{Canary}} \u001b[31m \u0000"}"""),
        ("/v1/intake", $$"""{"text":"{{Canary}} \ud800"}"""),
        ("/v1/judgements", $$"""{"vehicle":{},"findings":[{"check":"{{Canary}}","value":1,"unit":"{{Canary}}"}]}"""),
        ("/v1/why-not", $$"""{"vehicle":{},"complaint":"{{Canary}}","fault":"{{Canary}}"}"""),
        ("/v1/catalogue/search", $$"""{"words":"{{Canary}}"}"""),
        ($"/v1/{Canary}?{Canary}={Canary}", "{}"),
        ("/mcp", $$$$"""{"jsonrpc":"2.0","id":1,"method":"initialize","params":{"protocolVersion":"2025-06-18","capabilities":{},"clientInfo":{"name":"{{{{Canary}}}}","version":"1"}}}"""),
        ("/mcp", $$$$"""{"jsonrpc":"2.0","id":2,"method":"tools/call","params":{"name":"advise","arguments":{"vehicle":{},"complaint":"{{{{Canary}}}}"}}}"""),
        ("/mcp", $$$$"""{"jsonrpc":"2.0","id":3,"method":"tools/call","params":{"name":"advise","arguments":{"{{{{Canary}}}}":1}}}"""),
        ("/mcp", $$$$"""{"jsonrpc":"2.0","id":4,"method":"tools/call","params":{"name":"{{{{Canary}}}}","arguments":{}}}"""),
        ("/mcp", $$"""{"jsonrpc":"2.0","id":5,"method":"{{Canary}}"}"""),
        ("/mcp", Canary),
    ];

    [Fact]
    public async Task Serve_UntilTold_GreetsAnswersLogsNothingOfWhatWasSentAndEndsWell()
    {
        var (process, address, errors) = await Run.ServeAsync();
        using var started = process;
        using var client = new HttpClient { BaseAddress = address };

        client.DefaultRequestHeaders.Accept.ParseAdd("application/json, text/event-stream");
        foreach (var (path, body) in Written)
        {
            var answer = await client.PostAsync(path, new StringContent(body, Encoding.UTF8, path.EndsWith("batch", StringComparison.Ordinal) ? "application/x-ndjson" : "application/json"));
            Assert.True((int)answer.StatusCode < 500, body);
        }

        var neverCompressed = new StringContent(Canary, Encoding.UTF8, "application/json") { Headers = { ContentEncoding = { "gzip" } } };
        Assert.Equal(400, (int)(await client.PostAsync("/v1/advice", neverCompressed)).StatusCode);
        await client.GetAsync($"/v1/catalogue/symptoms/{Canary}");
        using var stop = Process.Start("kill", ["-TERM", $"{process.Id}"]);
        await process.WaitForExitAsync().WaitAsync(TimeSpan.FromMinutes(1));

        Assert.Equal(0, process.ExitCode);
        var log = await errors;
        Assert.DoesNotContain(Canary, log, StringComparison.Ordinal);
        Assert.Contains("\"StatusCode\":400", log, StringComparison.Ordinal);
        Assert.Contains("\"Route\":\"/v1/advice\"", log, StringComparison.Ordinal);
        Assert.DoesNotContain("\"StatusCode\":200", log, StringComparison.Ordinal);
        Assert.DoesNotContain("\"StatusCode\":500", log, StringComparison.Ordinal);
    }

    /// <summary>The caller has not sent its last line yet, so that the batch cannot be complete.</summary>
    [Fact]
    public async Task Serve_ToldToEndWithinABatch_AnswersWhatItReadAndSaysThatItIsNotComplete()
    {
        const int Lines = 20;
        var (process, address, _) = await Run.ServeAsync();
        using var started = process;
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
}
