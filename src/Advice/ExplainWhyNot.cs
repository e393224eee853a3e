using Advice.Answers;
using Advice.Counterfactuals;
using Advice.Documents;
using Advice.Evidence;
using Advice.Intake;
using Advice.Symptoms;

namespace Advice;

/// <summary>The way of a why-not question: case, assessment, contrast, document.</summary>
public sealed class ExplainWhyNot
{
    private readonly IRuleBook _rules;
    private readonly TimeProvider _clock;
    private readonly CaseReader _cases;
    private readonly Assessment _assessment;
    private readonly WhyNot _faults;
    private readonly WhyNotCheck _checks;
    private readonly WhyNotWriter _writer;

    /// <summary>Explanations by a rule set. Safe to share between threads.</summary>
    public ExplainWhyNot(IRuleBook rules, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(rules);
        (_rules, _clock) = (rules, clock);
        var catalogue = rules.Catalogue;
        _cases = new(catalogue, new ComplaintReader(catalogue.Symptoms.Values, catalogue.Occasions.Values, catalogue.Positions.Values));
        _assessment = new(rules);
        _faults = new(catalogue, _assessment);
        _checks = new(catalogue, _assessment, _faults);
        _writer = new(catalogue, rules.Revision);
    }

    /// <summary>Explains a request whose shape, ranges and ids were checked.</summary>
    public WhyNotDocument To(WhyNotRequest request)
    {
        var reading = _cases.Read(request.Case, DateOnly.FromDateTime(_clock.GetUtcNow().Date));
        var advised = _assessment.Of(reading.Case);
        return request.Check is { } check
            ? _writer.Write(reading, advised, _checks.Explain(_rules.Catalogue.Checks[check], advised))
            : _writer.Write(reading, advised, _faults.Explain(_rules.Catalogue.Faults[request.Fault!], advised));
    }
}
