using AdviceService.Http.Problems;

namespace AdviceService.Http;

/// <summary>Whether the process lives, and whether it may be sent requests.</summary>
internal static class HealthRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/health/live", () => Results.Text("live")).ExcludeFromDescription();
        routes.MapGet("/health/ready", (Readiness readiness) => readiness.IsReady
            ? Results.Text("ready")
            : new ProblemResult(ProblemDocument.Of(503, "not-ready", "The rules are being loaded or the service is stopping; ask again in a second.")))
            .ExcludeFromDescription();
    }
}
