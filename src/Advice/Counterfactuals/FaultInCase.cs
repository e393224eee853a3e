using Advice.Knowledge;
using Advice.Knowledge.Checks;

namespace Advice.Counterfactuals;

/// <summary>How a fault stands in a case, and what would bring it to the front.</summary>
/// <param name="Fault">The fault.</param>
/// <param name="Rank">Its place among the suspects, from 1; null where the case does not raise it.</param>
/// <param name="Probability">Its probability; null where the case does not raise it.</param>
/// <param name="Conditions">What speaks for it: existence on this vehicle, then signs by strength, then factors.</param>
/// <param name="Changes">The smallest changes that would bring it among the first three, each by itself; empty where it is there or none does.</param>
/// <param name="LookAt">The checks that would find it on this vehicle, quickest first.</param>
public sealed record FaultInCase(
    Fault Fault, int? Rank, double? Probability, IReadOnlyList<Condition> Conditions, IReadOnlyList<Counterfactual> Changes, IReadOnlyList<Check> LookAt);
