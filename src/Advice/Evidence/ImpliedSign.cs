using Advice.Knowledge.Rules;

namespace Advice.Evidence;

/// <summary>A sign that is certain because another was seen.</summary>
public sealed record ImpliedSign(SeenSign From, SeenSign Implied, ImpliesRule Rule);
