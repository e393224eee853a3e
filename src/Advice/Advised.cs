using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Rules;
using Advice.Steps;
using Advice.Suspects;

namespace Advice;

/// <summary>What was concluded about a case, before it is put into words.</summary>
/// <param name="Case">The case.</param>
/// <param name="Evidence">What the rules found to apply.</param>
/// <param name="Suspicion">What is suspected.</param>
/// <param name="Driving">Driving advice that applies, strictest first, then by rule.</param>
/// <param name="Steps">What to inspect, best first.</param>
/// <param name="LeftOut">Ids of the checks that the case asks no more for or has no time for; ranked when asked for.</param>
/// <param name="Cautions">Cautions that the case calls for, by rule.</param>
public sealed record Advised(
    Case Case, CaseEvidence Evidence, Suspicion Suspicion, IReadOnlyList<DrivingRule> Driving, IReadOnlyList<Step> Steps, Lazy<IReadOnlyList<string>> LeftOut,
    IReadOnlyList<WarnsRule> Cautions)
{
    /// <summary>What was found out of the vehicle on the way; null = nothing that could be used again.</summary>
    internal OnVehicle? Vehicle { get; init; }

    /// <summary>Ids of the symptoms that were reported or denied, or follow from what was.</summary>
    public IReadOnlySet<string> Spoken => Case.Reports.Select(report => report.Symptom).Concat(Evidence.Implied.Select(one => one.Implied.Sign.Id)).ToHashSet();

    /// <summary>Whether the vehicle may not be driven at all.</summary>
    public bool ForbidsDriving => Forbid(Case, Driving);

    /// <summary>Whether rules or findings forbid driving.</summary>
    public static bool Forbid(Case @case, IReadOnlyList<DrivingRule> driving) =>
        driving is [{ Advice: DrivingAdvice.Stop }, ..] || @case.Outcomes.Any(outcome => outcome.Deficiency == Deficiency.Dangerous);
}
