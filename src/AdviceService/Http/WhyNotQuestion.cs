using Advice.Documents.Requests;

namespace AdviceService.Http;

/// <summary>A request for advice that also names a fault or a check. It only describes the interface: the reader of requests reads it.</summary>
public sealed record WhyNotQuestion : AdviceRequest
{
    /// <summary>Id of the fault; instead of a check.</summary>
    public string? Fault { get; init; }

    /// <summary>Id of the check; instead of a fault.</summary>
    public string? Check { get; init; }
}
