using Advice.Evidence;
using Advice.Steps;
using Advice.Suspects;

namespace Advice;

/// <summary>What was concluded about a case, before it is put into words.</summary>
/// <param name="Case">The case.</param>
/// <param name="Evidence">What the rules found to apply.</param>
/// <param name="Suspicion">What is suspected.</param>
/// <param name="Steps">What to inspect, best first.</param>
/// <param name="StepsLeftOut">How many steps more there are than the case asks for.</param>
/// <param name="Conclusions">What follows for cautions and driving.</param>
public sealed record Advised(
    Case Case, CaseEvidence Evidence, Suspicion Suspicion, IReadOnlyList<Step> Steps, int StepsLeftOut, Conclusions Conclusions);
