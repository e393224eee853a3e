using System.Reflection;
using Advice.Documents;
using Advice.Due;
using Advice.Intake;
using Advice.Knowledge;
using Advice.Questions;

namespace Advice.Answers;

/// <summary>Puts what was concluded into one document, in the reader's words.</summary>
public sealed class AdviceWriter(Catalogue catalogue, string revision)
{
    private const string Notice =
        "This advice rests on general knowledge of vehicles. The vehicle maker's manual, local codes and the judgement of licensed people who see the vehicle come before it.";

    /// <summary>Version of the program.</summary>
    public static string Program { get; } =
        typeof(AdviceWriter).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

    private readonly RuleSetStamp _ruleSet = new(revision, catalogue.Rules.Count, catalogue.Overlays);
    private readonly UnderstoodWriter _understood = new(catalogue);
    private readonly StepWriter _steps = new(catalogue);
    private readonly CautionWriter _cautions = new(catalogue);
    private readonly OverlayWriter _overlays = new(catalogue);

    /// <summary>The document.</summary>
    /// <param name="reading">How the request was read.</param>
    /// <param name="advised">What was concluded.</param>
    /// <param name="questions">What to ask next, most useful first.</param>
    /// <param name="due">How the service items stand.</param>
    public AdviceDocument Write(CaseReading reading, Advised advised, IReadOnlyList<Question> questions, IReadOnlyList<DueItem> due)
    {
        var audience = advised.Case.Workshop.Reader;
        var driving = DrivingWriter.Write(advised, reading.Judgements);
        var cautions = _cautions.Write(advised);
        return new AdviceDocument
        {
            AsOf = advised.Case.AsOf,
            Program = Program,
            RuleSet = _ruleSet,
            Summary = SummaryWriter.Write(advised, driving.Advice, reading.NotUnderstood.Count > 0),
            Driving = driving,
            Understood = _understood.Write(reading, advised),
            Steps = [.. advised.Steps.Select((step, i) => _steps.Write(step, i + 1, advised))],
            Suspects = SuspectWriter.Write(advised),
            Cautions = cautions,
            OrderOfWork = WorkWriter.OrderOfWork(advised, catalogue),
            Questions = [.. questions.Select(question => QuestionWriter.Write(question, audience))],
            Judgements = reading.Judgements,
            Due = [.. due.Where(item => item.Status is DueStatus.Overdue or DueStatus.Due or DueStatus.Soon).Select(item => DueWriter.Write(item, audience))],
            Appointment = WorkWriter.Appointment(advised, driving.Advice),
            Normal =
            [
                .. advised.Evidence.Normals.Select(normal => normal.Rule).DistinctBy(rule => rule.Id)
                    .Select(rule => new NormalDocument(rule.Id, rule.Because.For(audience), rule.Source?.ToString())),
            ],
            FromOverlays = _overlays.Write(advised, cautions, due),
            Notice = Notice,
        };
    }
}
