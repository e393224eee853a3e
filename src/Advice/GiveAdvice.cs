using Advice.Answers;
using Advice.Arithmetic;
using Advice.Counterfactuals;
using Advice.Documents;
using Advice.Documents.Counterfactuals;
using Advice.Documents.Dues;
using Advice.Documents.Judgements;
using Advice.Documents.Requests;
using Advice.Documents.Understood;
using Advice.Due;
using Advice.Evidence;
using Advice.Inspections;
using Advice.Intake;
using Advice.Knowledge;
using Advice.Knowledge.Words;
using Advice.Questions;
using Advice.Wear;

namespace Advice;

/// <summary>The way of a request: case, assessment, questions, dues, document. Every request was checked for shape, ranges and ids.</summary>
public sealed class GiveAdvice
{
    private readonly Catalogue _catalogue;
    private readonly TimeProvider _clock;
    private readonly CaseReader _cases;
    private readonly Assessment _assessment;
    private readonly InspectionAssessment _inspection;
    private readonly QuestionChoice _questions;
    private readonly DueReckoning _due;
    private readonly AdviceWriter _writer;
    private readonly IntakeWriter _intakeWriter;
    private readonly TriageWriter _triage;
    private readonly ProjectWear _wear;
    private readonly WhyNot _whyNot;
    private readonly WhyNotCheck _whyNotCheck;
    private readonly WhyNotWriter _whyNotWriter;
    private readonly OverlayWriter _overlays;
    private readonly RuleSetStamp _ruleSet;

    /// <summary>Advice by a rule set. Safe to share between threads.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="clock">The clock that counts where a request names no day.</param>
    public GiveAdvice(IRuleBook rules, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(rules);
        var catalogue = rules.Catalogue;
        (_catalogue, _clock) = (catalogue, clock);
        _cases = new(catalogue);
        _assessment = new(rules);
        _inspection = new(rules);
        _questions = new(catalogue, _assessment);
        _due = new(catalogue);
        var overlays = new OverlayWriter(rules);
        (_overlays, _ruleSet) = (overlays, RuleSetStamp.Of(rules));
        _writer = new(rules, overlays);
        _intakeWriter = new(rules, overlays);
        _wear = new(rules, overlays);
        _triage = new(rules, overlays);
        _whyNot = new(catalogue);
        _whyNotCheck = new(catalogue, _whyNot);
        _whyNotWriter = new(rules, overlays);
    }

    /// <summary>The day that counts where a request names none.</summary>
    public DateOnly Today => DateOnly.FromDateTime(_clock.GetUtcNow().Date);

    /// <summary>Advises on a request.</summary>
    public AdviceDocument To(AdviceRequest request)
    {
        var reading = _cases.Read(request, Today);
        var advised = _assessment.Of(reading.Case);
        return _writer.Write(reading, advised, _questions.Choose(advised), _due.Of(reading.Case), Naming.Advice);
    }

    /// <summary>The whole inspection of the vehicle, in order of work, with all service items that are not for later.</summary>
    public AdviceDocument Inspect(AdviceRequest request)
    {
        var reading = _cases.Read(request with { Limit = request.Limit ?? int.MaxValue }, Today);
        var advised = _inspection.Of(reading.Case);
        var document = _writer.Write(reading, advised, _questions.OnSuspects(advised), _due.Of(reading.Case), Naming.Inspection);
        return document with { Summary = InspectionSummary.Write(document, _catalogue, reading.Case.Workshop.Reader) };
    }

    /// <summary>What the findings of a request mean.</summary>
    public JudgementsAnswer Judge(AdviceRequest request)
    {
        var reading = _cases.Read(request, Today);
        return _writer.WriteJudgements(reading, _assessment.Of(reading.Case));
    }

    /// <summary>How the service items of the vehicle stand.</summary>
    public DueAnswer Reckon(AdviceRequest request)
    {
        var @case = _cases.Read(request, Today).Case;
        return _writer.WriteDue(@case, _due.Of(@case));
    }

    /// <summary>Reads the text, codes and findings of a request whose shape, ranges and ids were checked, and says what to ask next.</summary>
    public IntakeDocument Intake(AdviceRequest request)
    {
        var reading = _cases.Read(request, Today);
        var advised = _assessment.Of(reading.Case);
        return _intakeWriter.Write(reading, advised, _questions.Choose(advised));
    }

    /// <summary>The same in the few figures by which a fleet is sorted.</summary>
    public TriageDocument Triage(AdviceRequest request)
    {
        var reading = _cases.Read(request, Today);
        return _triage.Write(reading, _assessment.Of(reading.Case));
    }

    /// <summary>When a wearing part reaches its limits.</summary>
    public ProjectionDocument Project(ProjectionRequest request) => _wear.Of(request, Today);

    /// <summary>What workshop arithmetic gave, with what it means.</summary>
    public ComputationAnswer Explain(Computation computation, Arithmetic.Outcome outcome)
    {
        ArgumentNullException.ThrowIfNull(computation);
        var computed = ComputationDocument.Of(computation, outcome, _catalogue, Audience.Technician);
        return new ComputationAnswer(computed, _ruleSet, _overlays.Write(computed));
    }

    /// <summary>Explains why a fault or check did not come up, to a request whose shape, ranges and ids were checked.</summary>
    public WhyNotDocument WhyNot(WhyNotRequest request)
    {
        var reading = _cases.Read(request.Case, Today);
        var advised = _assessment.Of(reading.Case);
        return request.Check is { } check
            ? _whyNotWriter.Write(reading, advised, _whyNotCheck.Explain(_catalogue.Checks[check], request.Case, advised, Assess))
            : _whyNotWriter.Write(reading, advised, _whyNot.Explain(_catalogue.Faults[request.Fault!], request.Case, advised, Assess));

        // No change that is tried changes the text.
        Advised Assess(AdviceRequest changed) => _assessment.Of(_cases.Read(changed, reading.Complaint, Today).Case);
    }
}
