using System.Text.Json;
using AdviceService.Json;

namespace AdviceService.Http.Problems;

/// <summary>A problem as the answer to a request.</summary>
internal sealed class ProblemResult(ProblemDocument problem) : IResult
{
    /// <summary>Media type of RFC 9457.</summary>
    public const string MediaType = "application/problem+json";

    /// <inheritdoc/>
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        var response = httpContext.Response;
        response.StatusCode = problem.Status;
        response.ContentType = MediaType;
        await response.Body.WriteAsync(JsonSerializer.SerializeToUtf8Bytes(problem, Written.As.ProblemDocument), httpContext.RequestAborted);
    }
}
