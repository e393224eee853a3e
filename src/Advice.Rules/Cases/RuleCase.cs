using Advice.Documents.Requests;
using Advice.Rules.Files;

namespace Advice.Rules.Cases;

/// <summary>What a rule set must answer to one request.</summary>
/// <param name="Id">Its id, unique among all cases.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Given">The request.</param>
/// <param name="Expectations">What the answer must be like; at least one.</param>
public sealed record RuleCase(string Id, Place Place, AdviceRequest Given, IReadOnlyList<Expectation> Expectations);
