using Advice.Arithmetic;
using Advice.Documents.Requests;

namespace AdviceService.Http;

/// <summary>A text, codes and findings to be read. It only describes the interface: the reader of requests reads it.</summary>
public sealed record IntakeRequest
{
    /// <summary>The day from which "last week" counts; without it the service's clock.</summary>
    public DateOnly? AsOf { get; init; }

    /// <summary>Whose limits apply to the findings; without it the strictest known.</summary>
    public string? Jurisdiction { get; init; }

    /// <summary>The vehicle, as far as known.</summary>
    public VehicleDescription? Vehicle { get; init; }

    /// <summary>What the driver says, in free text of at most 10,000 characters.</summary>
    public string? Text { get; init; }

    /// <summary>The same under the name that it has in a request for advice; instead of a text.</summary>
    public string? Complaint { get; init; }

    /// <summary>Ids of symptoms of which the driver cannot say whether they are there: they are not asked for again, and nothing follows from them.</summary>
    public IReadOnlyList<string> Unsure { get; init; } = [];

    /// <summary>Stored trouble codes, such as P0301, or with the failure type, such as P0301-1A.</summary>
    public IReadOnlyList<string> TroubleCodes { get; init; } = [];

    /// <summary>What was measured or seen.</summary>
    public IReadOnlyList<FindingReport> Findings { get; init; } = [];

    /// <summary>The values that the engine control stored with a trouble code. Where a check says so, they count as findings, unless there is one of that check.</summary>
    public Given? FreezeFrame { get; init; }

    /// <summary>For whom the answer is.</summary>
    public WorkshopDescription? Workshop { get; init; }
}
