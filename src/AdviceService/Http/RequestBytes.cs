using System.Buffers;
using System.IO.Pipelines;

namespace AdviceService.Http;

/// <summary>Takes the body of a request whole.</summary>
internal static class RequestBytes
{
    /// <summary>Largest body of one request, bytes.</summary>
    public const int Most = 1024 * 1024;

    /// <summary>Up to here a larger body is read to its end and dropped, bytes: a caller who is cut off while sending never sees the answer.</summary>
    public const int MostDropped = 16 * Most;

    /// <summary>The body.</summary>
    /// <exception cref="BadHttpRequestException">It is not JSON by its media type, larger than <see cref="Most"/>, or wrongly compressed.</exception>
    public static async Task<ReadOnlyMemory<byte>> ReadAsync(HttpRequest request)
    {
        if (!IsOf(request, "application/json"))
            throw new BadHttpRequestException("media type", StatusCodes.Status415UnsupportedMediaType);
        try
        {
            return await ReadAsync(request.BodyReader, request.HttpContext.RequestAborted);
        }
        catch (InvalidDataException broken)
        {
            throw new BadHttpRequestException("compression", StatusCodes.Status400BadRequest, broken);
        }
    }

    private static async Task<ReadOnlyMemory<byte>> ReadAsync(PipeReader reader, CancellationToken cancel)
    {
        using var body = new MemoryStream();
        var length = 0L;
        while (true)
        {
            var read = await reader.ReadAsync(cancel);
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
