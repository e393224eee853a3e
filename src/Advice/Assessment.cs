using Advice.Evidence;
using Advice.Steps;
using Advice.Suspects;

namespace Advice;

/// <summary>From a case to what is to be done about it: evidence, suspects, steps, conclusions.</summary>
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
        var (steps, leftOut) = _steps.Choose(@case, suspicion);
        var suspected = suspicion.Raised.GroupBy(suspect => suspect.Instance.Fault.Id)
            .ToDictionary(group => group.Key, group => Math.Min(1, group.Sum(suspect => suspect.Probability)));
        var conclusions = session.Conclude(suspected, [.. steps.Select(step => step.Check.Id)]);
        return new Advised(@case, evidence, suspicion, steps, leftOut, conclusions);
    }
}
