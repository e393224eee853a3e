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
        var vehicle = On(@case);
        var suspicion = _suspecting.Suspect(evidence, vehicle.Faults);
        var driving = session.LimitDriving(suspicion.ByFault);
        var steps = _steps.Choose(@case, suspicion, vehicle.Needs, mayDrive: !Advised.Forbid(@case, driving));
        var cautions = session.Caution([.. steps.Steps.Select(step => step.Check.Id), .. @case.Done]);
        return new Advised(@case, evidence, suspicion, driving, steps.Steps, steps.LeftOut, cautions) { Vehicle = vehicle };
    }

    /// <summary>What would come first if one more symptom were reported or denied, for each such report. As much of <see cref="Of"/> as that
    /// takes; what the report does not change is taken over.</summary>
    public IEnumerable<Prospect> Foresee(Advised advised, IEnumerable<Report> reports)
    {
        var vehicle = advised.Vehicle ?? On(advised.Case);
        return reports.Select(report => Foresee(advised, report, vehicle));
    }

    private Prospect Foresee(Advised advised, Report report, OnVehicle vehicle)
    {
        var session = rules.Open(advised.Case, advised.Evidence, report);
        var suspicion = _suspecting.Suspect(session.Gather(), vehicle.Faults);
        var mayDrive = !Advised.Forbid(advised.Case, session.LimitDriving(suspicion.ByFault));
        return new Prospect(suspicion.Raised is [var likeliest, ..] ? likeliest : null, _steps.First(advised.Case, suspicion, vehicle.Needs, mayDrive));
    }

    private OnVehicle On(Case @case) => new(_suspecting.On(@case), _steps.On(@case));
}
