using System.Reflection;
using Advice.Documents;
using Advice.Documents.Dues;
using Advice.Documents.Judgements;
using Advice.Due;
using Advice.Evidence;
using Advice.Intake;
using Advice.Knowledge;
using Advice.Knowledge.Words;
using Advice.Questions;
using Advice.Suspects;

namespace Advice.Answers;

/// <summary>Puts what was concluded into one document, in the reader's words.</summary>
public sealed class AdviceWriter
{
    /// <summary>Version of the program.</summary>
    public static string Program { get; } =
        typeof(AdviceWriter).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

    private readonly Catalogue _catalogue;
    private readonly RuleSetStamp _ruleSet;
    private readonly UnderstoodWriter _understood;
    private readonly StepWriter _steps;
    private readonly CautionWriter _cautions;
    private readonly AssumptionWriter _assumptions;
    private readonly JudgementWriter _judgements;
    private readonly SystemRanking _systems;
    private readonly OverlayWriter _overlays;
    private readonly DrivingWriter _driving;
    private readonly SummaryWriter _summary;
    private readonly DueWriter _due;
    private readonly QuestionWriter _questions;

    /// <summary>Writes what a rule set says.</summary>
    internal AdviceWriter(IRuleBook rules, OverlayWriter overlays)
    {
        _catalogue = rules.Catalogue;
        _ruleSet = RuleSetStamp.Of(rules);
        _understood = new(_catalogue);
        _steps = new(_catalogue);
        _cautions = new(_catalogue);
        _assumptions = new(_catalogue);
        _judgements = new(_catalogue);
        _systems = new(_catalogue);
        _overlays = overlays;
        _driving = new(_catalogue);
        _summary = new(_catalogue);
        _due = new(_catalogue);
        _questions = new(_catalogue);
    }

    /// <summary>The document.</summary>
    /// <param name="reading">How the request was read.</param>
    /// <param name="advised">What was concluded.</param>
    /// <param name="questions">What to ask next, most useful first.</param>
    /// <param name="items">How all service items stand.</param>
    /// <param name="naming">Which of them to name.</param>
    internal AdviceDocument Write(CaseReading reading, Advised advised, IReadOnlyList<Question> questions, IReadOnlyList<DueItem> items, Naming naming)
    {
        var due = items.Where(naming.Names).ToList();
        var audience = advised.Case.Workshop.Reader;
        var (judgements, axles) = (_judgements.Write(reading.Judgements, advised), _judgements.Write(reading.AcrossAxles, advised));
        var driving = _driving.Write(reading, advised, [.. judgements, .. axles]);
        var cautions = _cautions.Write(advised, [.. judgements, .. axles]);
        return new AdviceDocument
        {
            AsOf = advised.Case.AsOf,
            Program = Program,
            RuleSet = _ruleSet,
            Summary = _summary.Write(reading, advised, driving.Advice, questions.Count > 0),
            Driving = driving,
            Understood = _understood.Write(reading, advised),
            Steps = [.. advised.Steps.Select((step, i) => _steps.Write(step, i + 1, advised))],
            LeftOut = advised.LeftOut.Value,
            Systems =
            [
                .. _systems.Of(advised.Case, advised.Suspicion).Select(one => new SystemDocument(
                    one.System.Id, one.System.Name.For(audience), SuspectWriter.Rounded(one.Probability), Math.Round(one.Named, 2))),
            ],
            Suspects = SuspectWriter.Write(advised),
            Cautions = cautions,
            OrderOfWork = WorkWriter.OrderOfWork(advised, _catalogue),
            Questions = [.. questions.Select(question => _questions.Write(question, audience))],
            Judgements = judgements,
            AcrossAxles = axles,
            Due = [.. due.Select(item => _due.Write(item, audience))],
            Appointment = WorkWriter.Appointment(advised, driving.Advice),
            Normal = NormalWriter.Write(advised, driving.Advice),
            FromOverlays = _overlays.Write(naming, reading, advised, new(cautions.Select(caution => caution.Id), due.Select(item => item.Item.Id), judgements)),
            Notice = Notice(audience),
        };
    }

    /// <summary>What the findings of a case mean.</summary>
    public JudgementsAnswer WriteJudgements(CaseReading reading, Advised advised)
    {
        var (judgements, axles) = (_judgements.Write(reading.Judgements, advised), _judgements.Write(reading.AcrossAxles, advised));
        var withoutSteps = Naming.Judgements.Of(advised);
        var cautions = _cautions.Write(withoutSteps, [.. judgements, .. axles]);
        return new JudgementsAnswer(
            advised.Case.AsOf, Program, _ruleSet, _driving.Write(reading, advised, [.. judgements, .. axles]), judgements, axles, cautions, _assumptions.Write(withoutSteps),
            reading.FreezeFrameLeft, _overlays.Write(Naming.Judgements, reading, advised, new(cautions.Select(caution => caution.Id), [], judgements)), Notice(advised.Case.Workshop.Reader));
    }

    /// <summary>How the service items of a vehicle stand.</summary>
    public DueAnswer WriteDue(Case @case, IReadOnlyList<DueItem> due) =>
        new(@case.AsOf, Program, _ruleSet, [.. due.Select(item => _due.Write(item, @case.Workshop.Reader))], _overlays.Write(@case, due), Notice(@case.Workshop.Reader));

    private string Notice(Audience audience) => _catalogue.Say(audience, Sentences.Notice);
}
