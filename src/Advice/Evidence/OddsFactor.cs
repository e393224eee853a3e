using Advice.Knowledge.Rules;

namespace Advice.Evidence;

/// <summary>A factor on the odds of a fault on this vehicle.</summary>
public sealed record OddsFactor(string Fault, ProneRule Rule);
