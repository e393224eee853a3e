using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace AdviceService.Http;

/// <summary>A document as the answer to a request.</summary>
internal sealed class JsonResult<T>(T document, JsonTypeInfo<T> type) : IResult
{
    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        var body = JsonSerializer.SerializeToUtf8Bytes(document, type);
        httpContext.Response.ContentType = "application/json";
        httpContext.Response.ContentLength = body.Length;
        return httpContext.Response.Body.WriteAsync(body, httpContext.RequestAborted).AsTask();
    }
}
