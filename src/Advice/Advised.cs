using Advice.Evidence;
using Advice.Steps;
using Advice.Suspects;

namespace Advice;

/// <summary>What was concluded about a case, before it is put into words.</summary>
public sealed record Advised(Case Case, CaseEvidence Evidence, Suspicion Suspicion, IReadOnlyList<Step> Steps, Conclusions Conclusions);
