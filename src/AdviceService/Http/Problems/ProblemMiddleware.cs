
namespace AdviceService.Http.Problems;

/// <summary>Turns whatever goes wrong outside an endpoint into a problem: unknown addresses, wrong methods, broken transfers, our own faults.</summary>
internal sealed class ProblemMiddleware(RequestDelegate next, ILogger<ProblemMiddleware> log)
{
    /// <summary>Runs the rest and answers for it.</summary>
    public async Task InvokeAsync(HttpContext http)
    {
        try
        {
            await next(http);
            if (http.Response is { HasStarted: false, StatusCode: >= 400, ContentType: null })
                await new ProblemResult(Of(http.Response.StatusCode)).ExecuteAsync(http);
        }
        catch (BadHttpRequestException bad) when (!http.Response.HasStarted)
        {
            await new ProblemResult(Of(bad.StatusCode)).ExecuteAsync(http);
        }
        catch (OperationCanceledException) when (http.RequestAborted.IsCancellationRequested)
        {
            // The caller has gone; nobody is left to answer.
        }
        catch (Exception failure) when (!http.Response.HasStarted)
        {
            // The message may quote the caller's words, which are never logged.
            log.LogError("{Failure} while answering {Method} {Path}: {Trace}", failure.GetType().Name, http.Request.Method, http.Request.Path, failure.StackTrace);
            await new ProblemResult(Of(StatusCodes.Status500InternalServerError)).ExecuteAsync(http);
        }
    }

    private static ProblemDocument Of(int status) => status switch
    {
        404 => ProblemDocument.Of(404, "unknown-address", "The addresses are listed at /docs."),
        405 => ProblemDocument.Of(405, "wrong-method", "The Allow header names the methods that this address takes."),
        408 => ProblemDocument.Of(408, "too-slow", "Send the request faster or in parts."),
        413 => ProblemDocument.Of(413, "too-large", "A request may have 1 MiB; send many vehicles to /v1/advice/batch."),
        415 => ProblemDocument.Of(415, "wrong-media-type", "Send application/json in UTF-8; to /v1/advice/batch application/x-ndjson."),
        < 500 => ProblemDocument.Of(status, "bad-request", "The request does not follow HTTP, or its body is not compressed as Content-Encoding says."),
        _ => ProblemDocument.Of(status, "internal", "The fault is ours and has been logged; the same request will fail again until it is mended."),
    };
}
