using Advice.Documents.Dues;
using Advice.Documents.Judgements;
using Advice.Documents.Understood;
using Advice.Knowledge;

namespace Advice.Documents;

/// <summary>The advice: one document with all its reasons.</summary>
public sealed record AdviceDocument
{
    /// <summary>The day for which ages and dues were reckoned.</summary>
    public required DateOnly AsOf { get; init; }

    /// <summary>Version of the program.</summary>
    public required string Program { get; init; }

    /// <summary>The rule set that was used.</summary>
    public required RuleSetStamp RuleSet { get; init; }

    /// <summary>The answer in one or two plain sentences.</summary>
    public required string Summary { get; init; }

    /// <summary>Whether it may be driven.</summary>
    public required DrivingDocument Driving { get; init; }

    /// <summary>How the request was understood.</summary>
    public required UnderstoodDocument Understood { get; init; }

    /// <summary>What to inspect, best first; of an inspection in order of work.</summary>
    public required IReadOnlyList<StepDocument> Steps { get; init; }

    /// <summary>Ids of the checks that would also make sense but that were not asked for or for which there is no time.</summary>
    public required IReadOnlyList<string> LeftOut { get; init; }

    /// <summary>Where the fault may be, likeliest system first, at most five; an order to look in where the suspects do not tell.</summary>
    public required IReadOnlyList<SystemDocument> Systems { get; init; }

    /// <summary>Faults that the case raised, most probable first.</summary>
    public required IReadOnlyList<SuspectDocument> Suspects { get; init; }

    /// <summary>Every caution that a step names, and those of the case itself.</summary>
    public required IReadOnlyList<CautionDocument> Cautions { get; init; }

    /// <summary>The steps as a person would walk them.</summary>
    public required IReadOnlyList<VisitDocument> OrderOfWork { get; init; }

    /// <summary>What to ask next, most useful first.</summary>
    public required IReadOnlyList<QuestionDocument> Questions { get; init; }

    /// <summary>What the findings mean, one entry per finding, in order, then those that the freeze frame makes.</summary>
    public required IReadOnlyList<JudgementDocument> Judgements { get; init; }

    /// <summary>What the difference of left and right means, for each check and axle that was measured on both sides.</summary>
    public required IReadOnlyList<JudgementDocument> AcrossAxles { get; init; }

    /// <summary>What is due by distance and time.</summary>
    public required IReadOnlyList<DueDocument> Due { get; init; }

    /// <summary>What to book.</summary>
    public required AppointmentDocument Appointment { get; init; }

    /// <summary>What was reported but is no fault.</summary>
    public required IReadOnlyList<NormalDocument> Normal { get; init; }

    /// <summary>Entries of overlays that had a part in this answer, and those switched off that would have had one, by kind and id.</summary>
    public required IReadOnlyList<OverlayEntry> FromOverlays { get; init; }

    /// <summary>What this advice defers to.</summary>
    public required string Notice { get; init; }
}
