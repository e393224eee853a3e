using System.Buffers;
using System.Text.Json;
using System.Threading.Channels;
using AdviceService.Http.Problems;
using AdviceService.Json;
using Microsoft.AspNetCore.Http.Features;

namespace AdviceService.Http.Batch;

/// <summary>Answers a batch line by line, in order.</summary>
internal static class BatchAnswer
{
    /// <summary>Media type of newline-delimited JSON.</summary>
    public const string MediaType = "application/x-ndjson";

    /// <summary>Largest batch of one request, bytes: it may wait in memory as a whole while the caller does not read.</summary>
    private const long Most = 256L * 1024 * 1024;

    private static readonly ProblemDocument TooLong =
        ProblemDocument.Of(400, "too-long", $"A line may have {BatchLines.LongestLine / 1024} KiB.");

    public static async Task AnswerAsync(HttpContext http, AdviceDesk desk, IHostApplicationLifetime life)
    {
        if (!RequestBytes.IsOf(http.Request, MediaType))
            throw new BadHttpRequestException("media type", StatusCodes.Status415UnsupportedMediaType);
        if (http.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = Most;
        http.Response.ContentType = MediaType;
        var lines = Channel.CreateUnbounded<(int Number, byte[]? Line)>(new() { SingleReader = true, SingleWriter = true });
        var reading = BatchLines.ReadAsync(http.Request.BodyReader, lines.Writer, http.RequestAborted);
        var count = await WriteAnswersAsync(http, desk, lines.Reader, life.ApplicationStopping);
        await WriteLineAsync(http, JsonSerializer.SerializeToUtf8Bytes(new EndLine(count), Written.As.EndLine));
        if (count.Complete)
            await reading;
    }

    private static async Task<BatchCount> WriteAnswersAsync(
        HttpContext http, AdviceDesk desk, ChannelReader<(int Number, byte[]? Line)> lines, CancellationToken stopping)
    {
        var (answers, problems) = (0, 0);
        try
        {
            await foreach (var (number, line) in lines.ReadAllAsync(stopping))
            {
                var (answered, text) = Answer(desk, number, line);
                _ = answered ? answers++ : problems++;
                await WriteLineAsync(http, text);
            }

            return new BatchCount(answers + problems, answers, problems, true);
        }
        catch (Exception cut) when (cut is OperationCanceledException or IOException or BadHttpRequestException)
        {
            http.RequestAborted.ThrowIfCancellationRequested();
            return new BatchCount(answers + problems, answers, problems, false);
        }
    }

    private static (bool Answered, byte[] Text) Answer(AdviceDesk desk, int number, byte[]? line)
    {
        if (line is null)
            return (false, Problem(null, number, TooLong));
        var (id, answer) = desk.AnswerLine(line);
        return answer.Value is { } advice
            ? (true, JsonSerializer.SerializeToUtf8Bytes(new AnswerLine(id, number, advice), Written.As.AnswerLine))
            : (false, Problem(id, number, ProblemDocument.Of(answer.Status, answer.Errors)));
    }

    private static byte[] Problem(JsonElement? id, int number, ProblemDocument problem) =>
        JsonSerializer.SerializeToUtf8Bytes(new ProblemLine(id, number, problem), Written.As.ProblemLine);

    private static async Task WriteLineAsync(HttpContext http, byte[] line)
    {
        var body = http.Response.BodyWriter;
        body.Write(line);
        body.Write("\n"u8);
        await body.FlushAsync(http.RequestAborted);
    }
}
