using Advice.Knowledge.Checks;

namespace Advice.Counterfactuals;

/// <summary>How a check stands in a case.</summary>
/// <param name="Check">The check.</param>
/// <param name="Rank">Its place among all steps, from 1; null where it is no step.</param>
/// <param name="Conditions">Whether it makes sense on this vehicle, whether it is still to be done, whether it may be done.</param>
/// <param name="Before">The first of the steps before it that find what it would of this case; empty where it is among the first three.</param>
/// <param name="Changes">The smallest changes that would bring it among the first three steps, each by itself; empty where it is there or none does.</param>
/// <param name="Faults">The faults that it finds, surest first, each in the case.</param>
public sealed record CheckInCase(Check Check, int? Rank, IReadOnlyList<Condition> Conditions, IReadOnlyList<StepBefore> Before, IReadOnlyList<Counterfactual> Changes, IReadOnlyList<FaultInCase> Faults);
