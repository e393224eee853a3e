using Advice.Knowledge;

namespace Advice.Evidence;

/// <summary>What follows from signs, suspects and advised checks.</summary>
/// <param name="Cautions">Cautions that the case calls for, by rule.</param>
/// <param name="Driving">Driving advice that applies, strictest first, then by rule.</param>
public sealed record Conclusions(IReadOnlyList<WarnsRule> Cautions, IReadOnlyList<DrivingRule> Driving);
