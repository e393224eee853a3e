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
        var steps = _steps.Choose(@case, suspicion, vehicle.Checks, mayDrive: !Advised.Forbid(@case, driving));
        var cautions = session.Caution([.. steps.Steps.Select(step => step.Check.Id), .. @case.Done]);
        return new Advised(@case, evidence, suspicion, driving, steps.Steps, steps.LeftOut, cautions) { Vehicle = vehicle };
    }

    /// <summary>What would come first if one more symptom were reported or denied, for each such report. As much of <see cref="Of"/> as that
    /// takes; what the report does not change is taken over.</summary>
    public IEnumerable<Prospect> Foresee(Advised advised, IEnumerable<Report> reports)
    {
        var vehicle = advised.Vehicle ?? On(advised.Case);
        var open = rules.Continue(advised.Case, advised.Evidence);
        var touched = advised.Evidence.Links.Select(link => link.Fault).ToHashSet();
        return reports.Select(report => Foresee(advised, report, open(report), vehicle, touched));
    }

    private Prospect Foresee(Advised advised, Report report, IRuleSession session, OnVehicle vehicle, HashSet<string> touched)
    {
        var evidence = session.Gather();
        // A denial brings no suspect, and says nothing of one beside those that other signs brought.
        var suspicion = _suspecting.Suspect(report.Present ? evidence : evidence with { Links = [.. evidence.Links.Where(link => touched.Contains(link.Fault))] }, vehicle.Faults);
        var mayDrive = !Advised.Forbid(advised.Case, session.LimitDriving(suspicion.ByFault));
        return new Prospect(suspicion.Raised is [var likeliest, ..] ? likeliest : null, _steps.First(advised.Case, suspicion, _steps.With(report, advised.Case, vehicle.Checks), mayDrive));
    }

    private OnVehicle On(Case @case) => new(_suspecting.On(@case), _steps.On(@case));
}
