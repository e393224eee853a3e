using Advice.Documents;
using Advice.Knowledge;
using Advice.Ranking;
using Advice.Steps;

namespace Advice.Answers;

/// <summary>The work that the steps make: the walk around the vehicle, and the appointment to book.</summary>
internal static class WorkWriter
{
    /// <summary>The steps that can be done here, as a person would walk them.</summary>
    public static IReadOnlyList<VisitDocument> OrderOfWork(Advised advised, Catalogue catalogue) =>
    [
        .. Plan(advised.Steps.Where(step => advised.Case.Workshop.CanDo(step.Check))).Select(visit => new VisitDocument(
            catalogue.Areas[visit.AreaOrder].Id, visit.SetUps, visit.Checks, visit.Minutes)),
    ];

    /// <summary>What a workshop has to book for all steps.</summary>
    public static AppointmentDocument Appointment(Advised advised, DrivingAdvice driving) => new(
        Plan(advised.Steps).Sum(visit => visit.Minutes),
        advised.Steps.Any(step => step.Check.Needs.Any(need => need.Raises)),
        WithinDays(driving),
        [.. advised.Steps.Select(step => step.Check.System).Distinct()]);

    private static int? WithinDays(DrivingAdvice driving) => driving switch
    {
        DrivingAdvice.Stop => 0,
        DrivingAdvice.WorkshopOnly => 1,
        DrivingAdvice.Soon => 7,
        _ => null,
    };

    private static IReadOnlyList<Visit> Plan(IEnumerable<Step> steps) => Ranking.OrderOfWork.Plan([.. steps.Select(step => step.Work)]);
}
