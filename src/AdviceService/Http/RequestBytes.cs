using System.Buffers;

namespace AdviceService.Http;

/// <summary>Takes the body of a request whole.</summary>
internal static class RequestBytes
{
    /// <summary>Largest body of one request, bytes.</summary>
    public const int Most = 1024 * 1024;

    /// <summary>Up to here a larger body is read to its end and dropped, bytes: a caller who is cut off while sending never sees the answer.</summary>
    public const int MostDropped = 16 * Most;

    /// <summary>The body.</summary>
    /// <exception cref="BadHttpRequestException">It is not JSON by its media type, or larger than <see cref="Most"/>.</exception>
    public static async Task<ReadOnlyMemory<byte>> ReadAsync(HttpRequest request)
    {
        if (!IsOf(request, "application/json"))
            throw new BadHttpRequestException("media type", StatusCodes.Status415UnsupportedMediaType);
        using var body = new MemoryStream();
        var (reader, length) = (request.BodyReader, 0L);
        while (true)
        {
            var read = await reader.ReadAsync(request.HttpContext.RequestAborted);
            length += read.Buffer.Length;
            if (length <= Most)
                body.Write(read.Buffer.ToArray());
            reader.AdvanceTo(read.Buffer.End);
            if (read.IsCompleted)
                break;
        }

        return length <= Most
            ? body.GetBuffer().AsMemory(0, (int)body.Length)
            : throw new BadHttpRequestException("length", StatusCodes.Status413PayloadTooLarge);
    }

    /// <summary>Whether the request has that media type, with whatever parameters.</summary>
    public static bool IsOf(HttpRequest request, string mediaType) =>
        request.ContentType?.Split(';')[0].Trim().Equals(mediaType, StringComparison.OrdinalIgnoreCase) == true;
}
