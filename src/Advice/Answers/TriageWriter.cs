using Advice.Documents;
using Advice.Evidence;
using Advice.Intake;

namespace Advice.Answers;

/// <summary>The few figures by which a fleet is sorted.</summary>
internal sealed class TriageWriter(IRuleBook rules, OverlayWriter overlays)
{
    private const int Most = 3;
    private const int Decimals = 4;

    private readonly DrivingWriter _driving = new(rules.Catalogue);

    public TriageDocument Write(CaseReading reading, Advised advised)
    {
        var driving = _driving.Write(reading, advised, [.. reading.Judgements, .. reading.AcrossAxles]).Advice;
        var appointment = WorkWriter.Appointment(advised, driving);
        return new TriageDocument(
            driving, Math.Round(advised.Suspicion.Raised.Sum(suspect => suspect.Weight), Decimals),
            [.. advised.Steps.Take(Most).Select(step => step.Check.Id)],
            [.. advised.Suspicion.Raised.Select(suspect => suspect.Instance.Fault.Id).Distinct().Take(Most)],
            appointment.Minutes, appointment.Lift, appointment.WithinDays, rules.Revision,
            [.. overlays.Write(Naming.Suspects, reading, advised, NamedEntries.None).Select(entry => entry.Overlay).Distinct()]);
    }
}
