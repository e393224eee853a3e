using Advice.Documents;
using AdviceService.Http.Batch;
using AdviceService.Http.Problems;
using AdviceService.Json;

namespace AdviceService.Http;

/// <summary>Advice on one vehicle and on many.</summary>
internal static class AdviceRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapPost("/v1/advice", AdviseAsync)
            .WithName("advise").WithTags("advice").WithSummary("Advice on one vehicle")
            .WithDescription("What to inspect first, how, with which cautions and for which reason; whether it may be driven; what to ask next.")
            .Accepts<AdviceRequest>("application/json")
            .Produces<AdviceDocument>()
            .Produces<ProblemDocument>(400, ProblemResult.MediaType)
            .Produces<ProblemDocument>(413, ProblemResult.MediaType)
            .Produces<ProblemDocument>(415, ProblemResult.MediaType)
            .Produces<ProblemDocument>(422, ProblemResult.MediaType);

        routes.MapPost("/v1/advice/batch", BatchAnswer.AnswerAsync)
            .WithName("adviseBatch").WithTags("advice").WithSummary("Advice on many vehicles")
            .WithDescription("Each line is a request for advice that may have an id. One answer or one problem per line, in order; the last line counts them.")
            .Accepts<AdviceRequest>(BatchAnswer.MediaType)
            .Produces<AnswerLine>(200, BatchAnswer.MediaType)
            .Produces<ProblemDocument>(415, ProblemResult.MediaType);
    }

    private static async Task<IResult> AdviseAsync(HttpRequest request, AdviceDesk desk)
    {
        var answer = desk.Answer(await RequestBytes.ReadAsync(request));
        return answer.Value is { } advice
            ? new JsonResult<AdviceDocument>(advice, Written.As.AdviceDocument)
            : new ProblemResult(ProblemDocument.Of(answer.Status, answer.Errors));
    }
}
