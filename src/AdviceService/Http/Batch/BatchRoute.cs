using Advice.Documents.Requests;
using AdviceService.Fleet;
using AdviceService.Http.Problems;
using Microsoft.AspNetCore.Mvc;

namespace AdviceService.Http.Batch;

/// <summary>Advice on many vehicles.</summary>
internal static class BatchRoute
{
    /// <summary>Media type of newline-delimited JSON.</summary>
    private const string MediaType = "application/x-ndjson";

    public static void Map(IEndpointRouteBuilder routes) => routes.MapPost("/v1/advice/batch", AnswerAsync)
        .WithName("adviseBatch").WithTags("advice").WithSummary("Advice on many vehicles")
        .WithDescription(
            "Each line is a request for advice that may have an id. One reply per line, in order: an answer or a problem; the last line counts them and says whether all were answered. "
            + "With detail=triage an answer has the few figures by which a fleet is sorted.")
        .WithMetadata(new RequestSizeLimitAttribute(BatchAnswer.Most))
        .Accepts<AdviceRequest>(MediaType)
        .Produces<AnswerLine>(200, MediaType)
        .Produces<ProblemDocument>(400, ProblemResult.MediaType)
        .Produces<ProblemDocument>(415, ProblemResult.MediaType);

    private static async Task AnswerAsync(HttpContext http, AdviceDesk desk, BatchMemory memory, TimeProvider clock, ILogger<LineAnswers> log, IHostApplicationLifetime life, string detail = "full")
    {
        if (!RequestBytes.IsOf(http.Request, MediaType))
            throw new BadHttpRequestException("media type", StatusCodes.Status415UnsupportedMediaType);
        LineDetail? asked = detail switch
        {
            "full" => LineDetail.Full,
            "triage" => LineDetail.Triage,
            _ => null,
        };
        if (asked is null)
        {
            await new ProblemResult(ProblemDocument.Of(400, "unknown-word", "The parameter detail is full or triage.")).ExecuteAsync(http);
            return;
        }

        http.Response.ContentType = MediaType;
        var answers = new LineAnswers(
            desk, asked.Value, fault => log.LogError("{Failure} while answering a line of a batch: {Trace}", fault.GetType().Name, fault.StackTrace));
        await new BatchAnswer(http, answers, memory, clock).AnswerAsync(life.ApplicationStopping);
    }
}
