using System.Text.Json;
using AdviceService.Requests;

namespace AdviceService.Mcp;

/// <summary>What came of a call.</summary>
/// <param name="Document">The answer; null where the arguments were wrong.</param>
/// <param name="Errors">What was wrong with them.</param>
internal readonly record struct ToolAnswer(JsonElement? Document, IReadOnlyList<RequestError> Errors);
