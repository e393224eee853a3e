using Advice.Answers;
using Advice.Counterfactuals;
using Advice.Documents;
using Advice.Due;
using Advice.Evidence;
using Advice.Intake;
using Advice.Knowledge;
using Advice.Questions;
using Advice.Symptoms;

namespace Advice;

/// <summary>The way of a request: case, assessment, questions, dues, document.</summary>
public sealed class GiveAdvice
{
    private readonly Catalogue _catalogue;
    private readonly TimeProvider _clock;
    private readonly CaseReader _cases;
    private readonly Assessment _assessment;
    private readonly QuestionChoice _questions;
    private readonly DueReckoning _due;
    private readonly AdviceWriter _writer;
    private readonly WhyNot _whyNot;
    private readonly WhyNotCheck _whyNotCheck;
    private readonly WhyNotWriter _whyNotWriter;

    /// <summary>Advice by a rule set. Safe to share between threads.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="clock">The clock that counts where a request names no day.</param>
    public GiveAdvice(IRuleBook rules, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(rules);
        var catalogue = rules.Catalogue;
        (_catalogue, _clock) = (catalogue, clock);
        _cases = new(catalogue, new ComplaintReader(catalogue.Symptoms.Values, catalogue.Occasions.Values, catalogue.Positions.Values));
        _assessment = new(rules);
        _questions = new(catalogue, _assessment);
        _due = new(catalogue);
        _writer = new(catalogue, rules.Revision);
        _whyNot = new(catalogue, _assessment);
        _whyNotCheck = new(catalogue, _assessment, _whyNot);
        _whyNotWriter = new(catalogue, rules.Revision);
    }

    /// <summary>The day that counts where a request names none.</summary>
    public DateOnly Today => DateOnly.FromDateTime(_clock.GetUtcNow().Date);

    /// <summary>Advises on a request whose shape, ranges and ids were checked.</summary>
    public AdviceDocument To(AdviceRequest request)
    {
        var reading = _cases.Read(request, Today);
        var advised = _assessment.Of(reading.Case);
        return _writer.Write(reading, advised, _questions.Choose(advised), _due.Of(reading.Case));
    }

    /// <summary>Explains why a fault or check did not come up, to a request whose shape, ranges and ids were checked.</summary>
    public WhyNotDocument WhyNot(WhyNotRequest request)
    {
        var reading = _cases.Read(request.Case, Today);
        var advised = _assessment.Of(reading.Case);
        return request.Check is { } check
            ? _whyNotWriter.Write(reading, advised, _whyNotCheck.Explain(_catalogue.Checks[check], advised))
            : _whyNotWriter.Write(reading, advised, _whyNot.Explain(_catalogue.Faults[request.Fault!], advised));
    }
}
