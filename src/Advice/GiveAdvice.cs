using Advice.Documents;
using Advice.Evidence;
using Advice.Intake;
using Advice.Steps;
using Advice.Suspects;
using Advice.Symptoms;

namespace Advice;

/// <summary>The way of a request: case, evidence, suspects, steps, conclusions.</summary>
public sealed class GiveAdvice(IRuleBook rules, TimeProvider clock)
{
    private const int UsualSteps = 8;

    private readonly CaseReader _cases = new(rules.Catalogue, new ComplaintReader(
        rules.Catalogue.Symptoms.Values, rules.Catalogue.Occasions.Values, rules.Catalogue.Positions.Values));

    private readonly Suspecting _suspecting = new(rules.Catalogue);
    private readonly StepChoice _steps = new(rules.Catalogue);

    /// <summary>Advises on a request whose shape, ranges and ids were checked.</summary>
    public Advised To(AdviceRequest request)
    {
        var @case = _cases.Read(request, DateOnly.FromDateTime(clock.GetUtcNow().Date));
        var session = rules.Open(@case);
        var evidence = session.Gather();
        var suspicion = _suspecting.Suspect(@case, evidence);
        var steps = _steps.Choose(@case, suspicion).Take(request.Limit ?? UsualSteps).ToList();
        var suspected = suspicion.Raised.GroupBy(suspect => suspect.Instance.Fault.Id)
            .ToDictionary(group => group.Key, group => Math.Min(1, group.Sum(suspect => suspect.Probability)));
        return new Advised(@case, evidence, suspicion, steps, session.Conclude(suspected, [.. steps.Select(step => step.Check.Id)]));
    }
}
