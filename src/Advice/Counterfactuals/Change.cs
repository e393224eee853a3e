using System.Text.Json.Nodes;
using Advice.Documents.Requests;

namespace Advice.Counterfactuals;

/// <summary>One thing that a request does not say and might.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="Id">Id of the fact, symptom, code or check.</param>
/// <param name="Text">What would have to be so; of a symptom the question that asks for it.</param>
/// <param name="At">Where it goes in a request, as a JSON pointer; "-" is the end of a list.</param>
/// <param name="Value">What goes there.</param>
/// <param name="Make">Makes it.</param>
public sealed record Change(ChangeKind Kind, string Id, string Text, string At, JsonNode Value, Func<AdviceRequest, AdviceRequest> Make)
{
    /// <summary>How common it is among vehicles, for facts.</summary>
    public double Share { get; init; } = 1;
}
