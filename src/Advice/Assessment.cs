using Advice.Evidence;
using Advice.Questions;
using Advice.Steps;
using Advice.Suspects;

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

    /// <summary>What would come first in a case: as much of <see cref="Of"/> as that takes.</summary>
    public Prospect Foresee(Case @case)
    {
        var session = rules.Open(@case);
        var suspicion = _suspecting.Suspect(@case, session.Gather());
        var driving = session.LimitDriving(suspicion.ByFault);
        return new Prospect(
            suspicion.Raised is [var likeliest, ..] ? likeliest : null, _steps.First(@case, suspicion, mayDrive: !Advised.Forbid(@case, driving)));
    }
}
