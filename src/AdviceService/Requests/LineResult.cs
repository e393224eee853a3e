using System.Text.Json;
using Advice.Documents.Requests;

namespace AdviceService.Requests;

/// <summary>What came of reading a line of a batch.</summary>
/// <param name="Id">Its id as it was given, a string or an integer; null where there is none or the line is no JSON object.</param>
/// <param name="Request">The request or the errors.</param>
public sealed record LineResult(JsonElement? Id, ReadResult<AdviceRequest> Request);
