using Advice.Documents.Requests;

namespace Advice.Rules.Cases;

/// <summary>What came of reading the request of a case.</summary>
/// <param name="Request">The request; null where anything is wrong with it.</param>
/// <param name="Errors">What is wrong: where, as a JSON Pointer (RFC 6901), and what would be right.</param>
public sealed record GivenRequest(AdviceRequest? Request, IReadOnlyList<(string Pointer, string Detail)> Errors);
