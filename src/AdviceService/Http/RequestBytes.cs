namespace AdviceService.Http;

/// <summary>Takes the body of a request whole.</summary>
internal static class RequestBytes
{
    /// <summary>Largest body of one request, bytes.</summary>
    public const int Most = 1024 * 1024;

    /// <summary>The body.</summary>
    /// <exception cref="BadHttpRequestException">It is not JSON by its media type, or larger than <see cref="Most"/>.</exception>
    public static async Task<ReadOnlyMemory<byte>> ReadAsync(HttpRequest request)
    {
        if (!IsOf(request, "application/json"))
            throw new BadHttpRequestException("media type", StatusCodes.Status415UnsupportedMediaType);
        if (request.ContentLength > Most)
            throw new BadHttpRequestException("length", StatusCodes.Status413PayloadTooLarge);
        using var body = new MemoryStream((int)(request.ContentLength ?? 4096));
        await request.Body.CopyToAsync(body, request.HttpContext.RequestAborted);
        return body.Length <= Most
            ? body.GetBuffer().AsMemory(0, (int)body.Length)
            : throw new BadHttpRequestException("length", StatusCodes.Status413PayloadTooLarge);
    }

    /// <summary>Whether the request has that media type, with whatever parameters.</summary>
    public static bool IsOf(HttpRequest request, string mediaType) =>
        request.ContentType?.Split(';')[0].Trim().Equals(mediaType, StringComparison.OrdinalIgnoreCase) == true;
}
