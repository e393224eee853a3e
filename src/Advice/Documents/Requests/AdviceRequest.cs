using Advice.Arithmetic;

namespace Advice.Documents.Requests;

/// <summary>What a caller asks: this vehicle, what its driver notices, what was found.</summary>
public record AdviceRequest
{
    /// <summary>The day for which ages and dues are reckoned; without it the service's clock.</summary>
    public DateOnly? AsOf { get; init; }

    /// <summary>Whose limits apply; without it the strictest known.</summary>
    public string? Jurisdiction { get; init; }

    /// <summary>The vehicle. May be empty; a member that is absent, null or "unknown" is unknown.</summary>
    public required VehicleDescription Vehicle { get; init; }

    /// <summary>What the driver says, in free text of at most 10,000 characters.</summary>
    public string? Complaint { get; init; }

    /// <summary>What the driver notices, as data.</summary>
    public IReadOnlyList<SymptomReport> Symptoms { get; init; } = [];

    /// <summary>Ids of symptoms of which the driver cannot say whether they are there: they are not asked for again, and nothing follows from them.</summary>
    public IReadOnlyList<string> Unsure { get; init; } = [];

    /// <summary>Stored trouble codes, such as P0301, or with the failure type, such as P0301-1A.</summary>
    public IReadOnlyList<string> TroubleCodes { get; init; } = [];

    /// <summary>What was measured or seen.</summary>
    public IReadOnlyList<FindingReport> Findings { get; init; } = [];

    /// <summary>The values that the engine control stored with a trouble code. Where a check says so, they count as findings, unless there is one of that check.</summary>
    public Given? FreezeFrame { get; init; }

    /// <summary>Services that were done.</summary>
    public IReadOnlyList<ServiceReport> Services { get; init; } = [];

    /// <summary>What can be done where the vehicle is.</summary>
    public WorkshopDescription? Workshop { get; init; }

    /// <summary>The most steps to return, 1 … 50.</summary>
    public int? Limit { get; init; }
}
