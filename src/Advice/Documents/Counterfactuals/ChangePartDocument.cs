using System.Text.Json.Nodes;
using Advice.Counterfactuals;

namespace Advice.Documents.Counterfactuals;

/// <summary>One thing that a request does not say and might.</summary>
/// <param name="Kind">fact (of the vehicle), occasion (of a symptom that was reported), symptom, code or finding.</param>
/// <param name="Id">Id of the fact, symptom, code or check.</param>
/// <param name="Text">What would have to be so; of a symptom the question that asks for it.</param>
/// <param name="At">Where it goes in the request, as a JSON pointer; "-" is the end of a list.</param>
/// <param name="Value">What goes there.</param>
public sealed record ChangePartDocument(ChangeKind Kind, string Id, string Text, string At, JsonNode Value);
