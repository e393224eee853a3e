using Advice.Documents.Requests;

namespace AdviceService.Http;

/// <summary>A request for an inspection. It only describes the interface: the reader of requests reads it.</summary>
public sealed record InspectionRequest : AdviceRequest
{
    /// <summary>The most steps that may be asked for.</summary>
    internal const int MostSteps = 300;

    /// <summary>The most steps to return, 1 … 300; all of them without it.</summary>
    public new int? Limit { get; init; }
}
