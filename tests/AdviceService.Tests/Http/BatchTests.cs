using System.Net.Sockets;
using System.Text;
using System.Text.Json;

namespace AdviceService.Tests.Http;

[Collection(Served.ByHttp)]
public class BatchTests(RunningService service)
{
    private const string MediaType = "application/x-ndjson";

    [Fact]
    public async Task Batch_MixedLines_OneAnswerOrProblemEachInOrder()
    {
        var body = $"{Line("\"a\"")}\n\n  \r\nnot json\n{{\"id\":7,\"vehicle\":{{\"modelYear\":1200}}}}\n{{\"id\":8,\"vehicle\":{{}},\"x\":\"{new string('x', 70_000)}\"}}\n{Line("9")}";

        var lines = await SendAsync(body);

        Assert.Equal(["\"a\" 1 advice", "null 4 problem", "7 5 problem", "null 6 problem", "9 7 advice"], lines[..^1].Select(Described));
        Assert.Equal("""{"lines":5,"answers":2,"problems":3,"complete":true}""", lines[^1].GetProperty("end").GetRawText());
    }

    [Fact]
    public async Task Batch_Line_IsTheSameAdviceAsAlone()
    {
        const string Request = """{"asOf":"2026-03-01","vehicle":{"modelYear":2015},"complaint":"The brake pedal sinks"}""";

        var alone = await service.AdviseAsync(Request);
        var lines = await SendAsync(Request);

        Assert.Equal(alone.GetRawText(), lines[0].GetProperty("advice").GetRawText());
    }

    [Fact]
    public async Task Batch_EmptyBody_IsComplete() =>
        Assert.Equal("""{"lines":0,"answers":0,"problems":0,"complete":true}""", Assert.Single(await SendAsync("")).GetProperty("end").GetRawText());

    /// <summary>Both socket buffers together hold less than these answers, so that a service that waits for its reader would hang.</summary>
    [Fact]
    public async Task Batch_ClientSendsAllBeforeItReads_GetsEveryAnswer()
    {
        const int Lines = 1500;
        var body = Encoding.UTF8.GetBytes(string.Join('\n', Enumerable.Range(1, Lines).Select(number => Line($"{number}"))));
        using var client = new TcpClient("127.0.0.1", service.Client.BaseAddress!.Port);
        var stream = client.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(
            $"POST /v1/advice/batch HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: {MediaType}\r\nContent-Length: {body.Length}\r\n\r\n"));
        await stream.WriteAsync(body);

        using var reader = new StreamReader(stream);
        var answer = await reader.ReadToEndAsync().WaitAsync(TimeSpan.FromMinutes(5));

        Assert.Contains($$$"""{"end":{"lines":{{{Lines}}},"answers":{{{Lines}}},"problems":0,"complete":true}}""", answer, StringComparison.Ordinal);
    }

    private static string Line(string id) => $$"""{"id":{{id}},"vehicle":{},"complaint":"brakes squeal","limit":1}""";

    private static string Described(JsonElement line) =>
        $"{line.GetProperty("id").GetRawText()} {line.GetProperty("line")} {(line.TryGetProperty("advice", out _) ? "advice" : "problem")}";

    private async Task<List<JsonElement>> SendAsync(string body)
    {
        var response = await service.Client.PostAsync("/v1/advice/batch", RunningService.Content(body, MediaType));
        var text = await response.Content.ReadAsStringAsync();
        return [.. text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonDocument.Parse(line).RootElement)];
    }
}
