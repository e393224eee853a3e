using Advice.Evidence;
using Advice.Suspects;

namespace Advice.Inspections;

/// <summary>From a case to the whole inspection of its vehicle.</summary>
public sealed class InspectionAssessment(IRuleBook rules)
{
    private readonly Suspecting _suspecting = new(rules.Catalogue);
    private readonly ExpectedFaults _faults = new(rules.Catalogue);
    private readonly InspectionChoice _choice = new(rules.Catalogue);

    /// <summary>What to inspect on the vehicle of a case, in order of work.</summary>
    public Advised Of(Case @case)
    {
        var session = rules.Open(@case);
        var evidence = session.Gather() with { Factors = _faults.Factors(@case) };
        var suspicion = _suspecting.Suspect(@case, evidence);
        var driving = session.LimitDriving(suspicion.ByFault);
        var faults = _faults.On(@case, evidence, suspicion);
        var steps = _choice.Choose(@case, faults, suspicion.Raised, mayDrive: !Advised.Forbid(@case, driving));
        var cautions = session.Caution([.. steps.Steps.Select(step => step.Check.Id), .. @case.Done]);
        return new Advised(@case, evidence, suspicion, driving, steps.Steps, steps.LeftOut, cautions);
    }
}
