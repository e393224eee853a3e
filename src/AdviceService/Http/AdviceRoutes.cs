using System.Text.Json.Serialization.Metadata;
using Advice.Documents;
using Advice.Documents.Counterfactuals;
using Advice.Documents.Dues;
using Advice.Documents.Judgements;
using Advice.Documents.Requests;
using Advice.Documents.Understood;
using AdviceService.Catalogues;
using AdviceService.Http.Problems;
using AdviceService.Json;
using AdviceService.Requests;

namespace AdviceService.Http;

/// <summary>Advice on one vehicle.</summary>
internal static class AdviceRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        Describe(routes.MapPost("/v1/advice", AdviseAsync))
            .WithName("advise").WithSummary("Advice on one vehicle")
            .WithDescription("What to inspect first, how, with which cautions and for which reason; whether it may be driven; what to ask next.")
            .Accepts<AdviceRequest>("application/json").Produces<AdviceDocument>();

        Describe(routes.MapPost("/v1/inspection", InspectAsync))
            .WithName("inspect").WithSummary("The whole inspection of one vehicle")
            .WithDescription("Every check that applies to this vehicle, in order of work; within the minutes given those that find the most harm, the rest named in leftOut.")
            .Accepts<InspectionRequest>("application/json").Produces<AdviceDocument>();

        Describe(routes.MapPost("/v1/judgements", JudgeAsync))
            .WithName("judge").WithSummary("What findings mean")
            .WithDescription("One judgement for each finding, in order: its class, the limit that decides, the margin and what to do.")
            .Accepts<AdviceRequest>("application/json").Produces<JudgementsAnswer>();

        Describe(routes.MapPost("/v1/due", ReckonAsync))
            .WithName("reckonDue").WithSummary("What is due")
            .WithDescription("Every service item that this vehicle has: overdue, due, soon, later or unknown, by how much and why.")
            .Accepts<AdviceRequest>("application/json").Produces<DueAnswer>();

        Describe(routes.MapPost("/v1/why-not", WhyNotAsync))
            .WithName("whyNot").WithSummary("Why a fault or check did not come up")
            .WithDescription("A request for advice that also names a fault or a check: which conditions held, failed or are unknown, the smallest change that would bring it to the front, and what to look at next.")
            .Accepts<WhyNotQuestion>("application/json").Produces<WhyNotDocument>();

        Describe(routes.MapPost("/v1/catalogue/search", SearchAsync)).WithTags("knowledge")
            .WithName("searchCatalogue").WithSummary("Entries of the catalogue by words")
            .WithDescription("Finds the ids of systems, symptoms, faults, checks and cautions, best first.")
            .Accepts<CatalogueQuery>("application/json").Produces<CatalogueSearchResult>();

        Describe(routes.MapPost("/v1/intake", IntakeAsync))
            .WithName("intake").WithSummary("What a text and codes say")
            .WithDescription("Symptoms noticed or denied, with when, where, since when and the words they were read from; systems spoken of; trouble codes taken apart; work done or never done; what was not understood; what to ask next.")
            .Accepts<IntakeRequest>("application/json").Produces<IntakeDocument>();

        Describe(routes.MapPost("/v1/projections", ProjectAsync))
            .WithName("project").WithSummary("When a wearing part reaches its limits")
            .WithDescription("Dated readings of one part with the distance driven: where and when the line through them reaches each limit that applies, earliest to latest in nine of ten cases. From three readings on the scatter counts, from two the error of the gauge. What is no wear of one part is named, not projected.")
            .Accepts<ProjectionRequest>("application/json").Produces<ProjectionDocument>();
    }

    private static RouteHandlerBuilder Describe(RouteHandlerBuilder route) => route.WithTags("advice")
        .Produces<ProblemDocument>(400, ProblemResult.MediaType)
        .Produces<ProblemDocument>(413, ProblemResult.MediaType)
        .Produces<ProblemDocument>(415, ProblemResult.MediaType)
        .Produces<ProblemDocument>(422, ProblemResult.MediaType);

    private static async Task<IResult> AdviseAsync(HttpRequest request, AdviceDesk desk) =>
        Result(desk.Answer(await RequestBytes.ReadAsync(request)), Written.As.AdviceDocument);

    private static async Task<IResult> InspectAsync(HttpRequest request, AdviceDesk desk) =>
        Result(desk.Inspect(await RequestBytes.ReadAsync(request)), Written.As.AdviceDocument);

    private static async Task<IResult> JudgeAsync(HttpRequest request, AdviceDesk desk) =>
        Result(desk.Judge(await RequestBytes.ReadAsync(request)), Written.As.JudgementsAnswer);

    private static async Task<IResult> ReckonAsync(HttpRequest request, AdviceDesk desk) =>
        Result(desk.Reckon(await RequestBytes.ReadAsync(request)), Written.As.DueAnswer);

    private static async Task<IResult> WhyNotAsync(HttpRequest request, AdviceDesk desk) =>
        Result(desk.WhyNot(await RequestBytes.ReadAsync(request)), Written.As.WhyNotDocument);

    private static async Task<IResult> SearchAsync(HttpRequest request, AdviceDesk desk) =>
        Result(desk.Search(await RequestBytes.ReadAsync(request)), Written.As.CatalogueSearchResult);

    private static async Task<IResult> IntakeAsync(HttpRequest request, AdviceDesk desk) =>
        Result(desk.Intake(await RequestBytes.ReadAsync(request)), Written.As.IntakeDocument);

    private static async Task<IResult> ProjectAsync(HttpRequest request, AdviceDesk desk) =>
        Result(desk.Project(await RequestBytes.ReadAsync(request)), Written.As.ProjectionDocument);

    private static IResult Result<T>(ReadResult<T> answer, JsonTypeInfo<T> type)
        where T : class => answer.Value is { } document
            ? new JsonResult<T>(document, type)
            : new ProblemResult(ProblemDocument.Of(answer.Status, answer.Errors));
}
