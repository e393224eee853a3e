using Advice.Evidence;
using Advice.Questions;
using Advice.Steps;
using Advice.Suspects;
using Advice.Symptoms;

namespace Advice;

/// <summary>From a case to what is to be done about it: evidence, suspects, driving, steps, cautions.</summary>
public sealed class Assessment(IRuleBook rules)
{
    private readonly Suspecting _suspecting = new(rules.Catalogue);
    private readonly StepChoice _steps = new(rules.Catalogue);

    /// <summary>Assesses a case.</summary>
    public Advised Of(Case @case)
    {
        var session = rules.Open(@case);
        var evidence = session.Gather();
        var suspicion = _suspecting.Suspect(@case, evidence);
        var driving = session.LimitDriving(suspicion.ByFault);
        var steps = _steps.Choose(@case, suspicion, mayDrive: !Advised.Forbid(@case, driving));
        var cautions = session.Caution([.. steps.Steps.Select(step => step.Check.Id), .. @case.Done]);
        return new Advised(@case, evidence, suspicion, driving, steps.Steps, steps.LeftOut, cautions);
    }

    /// <summary>What would come first in a case if one more symptom were reported or denied, for each such report. As much of
    /// <see cref="Of"/> as that takes; what rests on the vehicle alone is reckoned once.</summary>
    public IEnumerable<Prospect> Foresee(Case @case, IEnumerable<Report> reports)
    {
        var (faults, needs) = (_suspecting.On(@case), _steps.On(@case));
        return reports.Select(report => Foresee(@case with { Reports = [.. @case.Reports, report] }, faults, needs));
    }

    private Prospect Foresee(Case @case, FaultsOnVehicle faults, NeedsOnVehicle needs)
    {
        var session = rules.Open(@case);
        var suspicion = _suspecting.Suspect(session.Gather(), faults);
        var mayDrive = !Advised.Forbid(@case, session.LimitDriving(suspicion.ByFault));
        return new Prospect(suspicion.Raised is [var likeliest, ..] ? likeliest : null, _steps.First(@case, suspicion, needs, mayDrive));
    }
}
