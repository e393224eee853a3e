using Advice.Arithmetic;
using Advice.Documents.Judgements;
using Advice.Knowledge.Words;
using AdviceService.Catalogues;
using AdviceService.Http.Problems;
using AdviceService.Json;
using AdviceService.Requests;

namespace AdviceService.Http;

/// <summary>Workshop arithmetic: an address for each computation, and the list of all.</summary>
internal static class ArithmeticRoutes
{
    public const string Path = "/v1/arithmetic";

    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet(Path, () => new JsonResult<IReadOnlyList<ComputationEntry>>(ComputationEntry.All, Written.As.IReadOnlyListComputationEntry))
            .WithName("listComputations").WithTags("arithmetic").WithSummary("All workshop arithmetic: formulas, sources, inputs with their units and ranges")
            .Produces<IReadOnlyList<ComputationEntry>>();
        foreach (var computation in Computations.All)
        {
            routes.MapPost($"{Path}/{computation.Name}", (HttpRequest request, TimeProvider clock, AdviceDesk desk) => ComputeAsync(computation, request, clock, desk))
                .WithName(computation.Name).WithTags("arithmetic").WithSummary(computation.Title)
                .WithDescription($"{computation.Formula}. Source: {string.Join("; ", computation.Sources.Select(source => source.WithNote))}.")
                .Produces<ComputationAnswer>()
                .Produces<ProblemDocument>(400, ProblemResult.MediaType)
                .Produces<ProblemDocument>(413, ProblemResult.MediaType)
                .Produces<ProblemDocument>(415, ProblemResult.MediaType)
                .Produces<ProblemDocument>(422, ProblemResult.MediaType);
        }

        routes.MapPost($"{Path}/{{name}}", (string name) => new ProblemResult(NoSuch(name))).ExcludeFromDescription();
    }

    private static async Task<IResult> ComputeAsync(Computation computation, HttpRequest request, TimeProvider clock, AdviceDesk desk)
    {
        var today = DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
        var read = RequestBody.Read<Given>(await RequestBytes.ReadAsync(request), new ComputationPart(computation, today).Read);
        if (read.Value is not { } given)
            return new ProblemResult(ProblemDocument.Of(read.Status, read.Errors));
        var outcome = computation.Compute(given);
        return outcome.Refused is { } input
            ? new ProblemResult(ProblemDocument.Of(422, [new RequestError(JsonPointer.Root.Member(input.Name).ToString(), ErrorCode.UnfitTogether, outcome.Why!)]))
            : new JsonResult<ComputationAnswer>(desk.Explain(computation, outcome), Written.As.ComputationAnswer);
    }

    private static ProblemDocument NoSuch(string name)
    {
        var near = NearestWord.Ids(name, Computations.All.Select(computation => computation.Name));
        return ProblemDocument.Of(
            404, "unknown-id", near.Count == 0 ? $"All computations are listed at {Path}." : $"The nearest computations are {string.Join(", ", near)}.");
    }
}
