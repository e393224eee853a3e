using System.Text.Json;
using Advice.Documents.Requests;
using Advice.Knowledge;
using AdviceService.Catalogues;

namespace AdviceService.Requests;

/// <summary>Reads requests for advice strictly: a request whose every member is right, or all that is wrong with it.</summary>
public sealed class RequestReader(Catalogue catalogue)
{
    private readonly VehicleWords _words = new(catalogue);

    /// <summary>The most steps that may be asked for.</summary>
    public int MostSteps { get; init; } = 50;

    /// <summary>Reads a body of UTF-8 JSON.</summary>
    /// <param name="utf8Json">The body.</param>
    /// <param name="today">The day that counts where the request names none.</param>
    public ReadResult<AdviceRequest> Read(ReadOnlyMemory<byte> utf8Json, DateOnly today) => RequestBody.Read(utf8Json, Part(today).Read);

    /// <summary>Reads JSON that was parsed elsewhere.</summary>
    /// <param name="json">The request.</param>
    /// <param name="today">The day that counts where the request names none.</param>
    public ReadResult<AdviceRequest> Read(JsonElement json, DateOnly today) => RequestBody.Read(json, Part(today).Read);

    /// <summary>Reads a line of a batch, which may have an id beside the members of a request.</summary>
    /// <param name="utf8Json">The line.</param>
    /// <param name="today">The day that counts where the request names none.</param>
    public LineResult ReadLine(ReadOnlyMemory<byte> utf8Json, DateOnly today)
    {
        JsonElement? id = null;
        var request = RequestBody.Read(utf8Json, line => ReadLine(line, today, out id));
        return new LineResult(request.Status == StatusCodes.Status400BadRequest ? id ?? BrokenLineId.Find(utf8Json.Span) : id, request);
    }

    /// <summary>Reads a line of a batch that was parsed elsewhere.</summary>
    /// <param name="json">The line.</param>
    /// <param name="today">The day that counts where the request names none.</param>
    public LineResult ReadLine(JsonElement json, DateOnly today)
    {
        JsonElement? id = null;
        var request = RequestBody.Read(json, line => ReadLine(line, today, out id));
        return new LineResult(id, request);
    }

    /// <summary>Reads a why-not question: the members of a request, and a fault or a check.</summary>
    /// <param name="utf8Json">The body.</param>
    /// <param name="today">The day that counts where the request names none.</param>
    public ReadResult<WhyNotRequest> ReadWhyNot(ReadOnlyMemory<byte> utf8Json, DateOnly today) =>
        RequestBody.Read(utf8Json, new WhyNotPart(catalogue, Part(today)).Read);

    /// <summary>Reads what is looked for in the catalogue.</summary>
    /// <param name="utf8Json">The body.</param>
    public static ReadResult<CatalogueQuery> ReadSearch(ReadOnlyMemory<byte> utf8Json) => RequestBody.Read(utf8Json, CatalogueQueryPart.Read);

    /// <summary>Reads a request for intake.</summary>
    /// <param name="utf8Json">The body.</param>
    /// <param name="today">The day that counts where the request names none.</param>
    public ReadResult<AdviceRequest> ReadIntake(ReadOnlyMemory<byte> utf8Json, DateOnly today) =>
        RequestBody.Read(utf8Json, new IntakePart(catalogue, _words, today).Read);

    /// <summary>Reads a question when a wearing part reaches its limit.</summary>
    /// <param name="utf8Json">The body.</param>
    /// <param name="today">The day that counts where the request names none.</param>
    public ReadResult<ProjectionRequest> ReadProjection(ReadOnlyMemory<byte> utf8Json, DateOnly today) =>
        RequestBody.Read(utf8Json, new ProjectionPart(catalogue, _words, today).Read);

    private AdviceRequest ReadLine(ObjectReader line, DateOnly today, out JsonElement? id)
    {
        id = line.Take("id") is { } given ? LineIdPart.Read(given) : null;
        return Part(today).Read(line);
    }

    private AdvicePart Part(DateOnly today) => new(catalogue, _words, today, MostSteps);
}
