using System.Text.Json;
using Advice.Documents;

namespace AdviceService.Fleet;

/// <summary>The answer to one line of a batch.</summary>
/// <param name="Id">The id of the line as it was given.</param>
/// <param name="Line">Its number, from 1.</param>
/// <param name="Advice">The advice.</param>
public sealed record AnswerLine(JsonElement? Id, int Line, AdviceDocument Advice);
