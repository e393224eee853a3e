using System.Text.Json;
using Advice.Documents;

namespace AdviceService.Fleet;

/// <summary>The answer to one line in the few figures by which a fleet is sorted.</summary>
/// <param name="Id">The id of the line as it was given.</param>
/// <param name="Line">Its number, from 1.</param>
/// <param name="Triage">The figures.</param>
public sealed record TriageLine(JsonElement? Id, int Line, TriageDocument Triage);
