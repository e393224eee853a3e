using System.Diagnostics;
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

    [GeneratedRegex("http://[0-9.:]+")]
    private static partial Regex Address();
}
