using System.IO.Compression;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;

namespace AdviceService.Tests.Http.Batch;

[Collection(Served.ByHttp)]
public class BatchTests(RunningService service)
{
    private const string MediaType = "application/x-ndjson";

    [Fact]
    public async Task Batch_MixedLines_OneAnswerOrProblemEachInOrder()
    {
        var body = $"{Line("\"a\"")}\n\n  \r\nnot json\n{{\"id\":7,\"vehicle\":{{\"modelYear\":1200}}}}\n{{\"id\":8,\"vehicle\":{{}},\"x\":\"{new string('x', 70_000)}\"}}\n{{\"vehicle\":{new string('[', 300)}{new string(']', 300)}}}\n{Line("9")}";

        var lines = await SendAsync(body);

        Assert.Equal(["\"a\" 1 advice", "null 4 problem", "7 5 problem", "null 6 problem", "null 7 problem", "9 8 advice"], lines[..^1].Select(Described));
        Assert.Equal(["malformed-json", "out-of-range", "too-long", "too-deep"], lines[1..^2].Select(line => line.GetProperty("problem").GetProperty("errors")[0].GetProperty("code").GetString()));
        Assert.Equal("""{"lines":6,"answers":2,"problems":4,"complete":true}""", lines[^1].GetProperty("end").GetRawText());
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

    [Fact]
    public async Task Batch_Triage_SaysTheSameAsTheFullAnswer()
    {
        const string Request = """{"id":1,"asOf":"2026-03-01","vehicle":{"modelYear":2015},"complaint":"The brake pedal sinks","workshop":{"minutes":40}}""";

        var full = (await SendAsync(Request))[0].GetProperty("advice");
        var triage = (await SendAsync(Request, "?detail=triage"))[0].GetProperty("triage");

        Assert.Equal(full.GetProperty("driving").GetProperty("advice").GetString(), triage.GetProperty("driving").GetString());
        Assert.Equal(full.GetProperty("steps").EnumerateArray().Take(3).Select(step => step.GetProperty("check").GetString()), Texts(triage, "checks"));
        Assert.Equal(full.GetProperty("suspects").EnumerateArray().Take(3).Select(suspect => suspect.GetProperty("fault").GetString()), Texts(triage, "faults"));
        foreach (var member in (string[])["minutes", "lift", "withinDays"])
            Assert.Equal(full.GetProperty("appointment").GetProperty(member).GetRawText(), triage.GetProperty(member).GetRawText());
        Assert.Equal(full.GetProperty("ruleSet").GetProperty("revision").GetString(), triage.GetProperty("revision").GetString());
        Assert.True(triage.GetProperty("expectedHarm").GetDouble() > 0);
    }

    [Fact]
    public async Task Batch_UnknownDetail_NamesTheWordsThatAreRight()
    {
        var response = await service.Client.PostAsync("/v1/advice/batch?detail=short", RunningService.Content("", MediaType));

        Assert.Equal(400, (int)response.StatusCode);
        Assert.Contains("full or triage", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Batch_WrongMediaType_NamesTheOneThatIsRight()
    {
        var response = await service.Client.PostAsync("/v1/advice/batch", RunningService.Json("{}"));

        Assert.Equal(415, (int)response.StatusCode);
        Assert.Contains(MediaType, await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Batch_CompressedBothWays_IsTheSame()
    {
        var body = string.Join('\n', Enumerable.Range(1, 200).Select(number => Line($"{number}")));
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/advice/batch") { Content = Compressed(Encoding.UTF8.GetBytes(body), MediaType) };
        request.Headers.AcceptEncoding.ParseAdd("gzip");

        var response = await service.Client.SendAsync(request);

        Assert.Equal(["gzip"], response.Content.Headers.ContentEncoding);
        using var text = new StreamReader(new GZipStream(await response.Content.ReadAsStreamAsync(), CompressionMode.Decompress));
        var plain = await service.Client.PostAsync("/v1/advice/batch", RunningService.Content(body, MediaType));
        Assert.Equal(await plain.Content.ReadAsStringAsync(), await text.ReadToEndAsync());
    }

    [Fact]
    public async Task Batch_CompressionThatBreaksOff_SaysThatItIsNotComplete()
    {
        var content = Compressed(Encoding.UTF8.GetBytes(Line("1") + "\n" + Line("2")), MediaType, cutBytes: 12);

        var response = await service.Client.PostAsync("/v1/advice/batch", content);

        Assert.Contains("\"complete\":false", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Advice_BrokenCompression_IsTheCallersFault()
    {
        var content = RunningService.Json("this was never compressed");
        content.Headers.ContentEncoding.Add("gzip");

        Assert.Equal(400, (int)(await service.Client.PostAsync("/v1/advice", content)).StatusCode);
    }

    [Fact]
    public async Task Advice_SmallInTransferAndLargeInMemory_IsTooLarge()
    {
        var content = Compressed(Encoding.UTF8.GetBytes(new string(' ', 40_000_000)), "application/json");

        Assert.Equal(413, (int)(await service.Client.PostAsync("/v1/advice", content)).StatusCode);
    }

    private static IEnumerable<string?> Texts(JsonElement triage, string member) => triage.GetProperty(member).EnumerateArray().Select(one => one.GetString());

    private static ByteArrayContent Compressed(byte[] body, string mediaType, int cutBytes = 0)
    {
        using var packed = new MemoryStream();
        using (var zip = new GZipStream(packed, CompressionLevel.Fastest, leaveOpen: true))
            zip.Write(body);
        return new ByteArrayContent(packed.ToArray()[..^cutBytes]) { Headers = { ContentType = new(mediaType), ContentEncoding = { "gzip" } } };
    }

    private static string Line(string id) => $$"""{"id":{{id}},"vehicle":{},"complaint":"brakes squeal","limit":1}""";

    private static string Described(JsonElement line) =>
        $"{line.GetProperty("id").GetRawText()} {line.GetProperty("line")} {(line.TryGetProperty("advice", out _) ? "advice" : "problem")}";

    private async Task<List<JsonElement>> SendAsync(string body, string query = "")
    {
        var response = await service.Client.PostAsync("/v1/advice/batch" + query, RunningService.Content(body, MediaType));
        var text = await response.Content.ReadAsStringAsync();
        return [.. text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonDocument.Parse(line).RootElement)];
    }
}
