using Advice.Documents;

namespace Advice.Rules.Cases;

/// <summary>What the answer to a case must be like in one respect.</summary>
/// <param name="Expected">What is expected, as the case file says it.</param>
/// <param name="IsMet">Whether an answer is like that.</param>
/// <param name="Actual">What the answer is instead, with its reasons.</param>
public sealed record Expectation(string Expected, Func<AdviceDocument, bool> IsMet, Func<AdviceDocument, string> Actual);
