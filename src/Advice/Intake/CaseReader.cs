using Advice.Documents;
using Advice.Findings;
using Advice.Judging;
using Advice.Knowledge;
using Advice.Symptoms;

namespace Advice.Intake;

/// <summary>Normalises a checked request into a case.</summary>
public sealed class CaseReader(Catalogue catalogue, ComplaintReader complaints)
{
    private const int UsualSteps = 8;

    private readonly FindingArithmetic _arithmetic = new(catalogue);
    private readonly FindingTrend _trend = new(catalogue);
    private readonly FindingJudge _judge = new(catalogue, new LimitChoice(catalogue));

    /// <summary>Reads a request whose shape, ranges and ids were checked.</summary>
    /// <param name="request">The request.</param>
    /// <param name="today">The day that counts where the request names none.</param>
    public CaseReading Read(AdviceRequest request, DateOnly today)
    {
        var asOf = request.AsOf ?? today;
        var vehicle = VehicleReader.Read(request.Vehicle, asOf);
        var reading = complaints.Read(request.Complaint ?? "");
        var given = request.Symptoms.Select(one => new Report(
            one.Symptom, [.. one.Occasions.Distinct().Order(StringComparer.Ordinal)], one.Position, one.Present));
        var judged = request.Findings.Select(finding => _judge.Judge(finding, vehicle, request.Jurisdiction)).ToList();
        var codes = request.TroubleCodes.Concat(reading.Codes).Distinct().Order(StringComparer.Ordinal).ToLookup(catalogue.Codes.ContainsKey);
        var @case = new Case
        {
            AsOf = asOf,
            Jurisdiction = request.Jurisdiction,
            Vehicle = vehicle,
            Reports = Merged([.. given, .. reading.Reports]),
            Codes = [.. codes[true]],
            Outcomes = [.. judged.Select(one => one.Outcome).OfType<Outcome>()],
            Services = request.Services.GroupBy(service => service.Item).ToDictionary(group => group.Key, Last),
            Workshop = Place(request.Workshop),
            MostSteps = request.Limit ?? UsualSteps,
        };
        return new CaseReading(@case, [.. judged.Zip(request.Findings, (one, finding) => InDepth(one.Document, finding, request, asOf))], [.. codes[false]], reading.NotUnderstood);
    }

    private JudgementDocument InDepth(JudgementDocument judgement, FindingReport finding, AdviceRequest request, DateOnly asOf) =>
        judgement with { Arithmetic = _arithmetic.Of(finding), Projection = _trend.Of(finding, request, asOf) };

    private static IReadOnlyList<Report> Merged(IEnumerable<Report> reports) =>
    [
        .. reports.GroupBy(report => (report.Symptom, string.Join('+', report.Occasions), report.Position, report.Present))
            .Select(group => group.MaxBy(report => report.Confidence)!)
            .OrderBy(report => report.Symptom, StringComparer.Ordinal)
            .ThenBy(report => string.Join('+', report.Occasions), StringComparer.Ordinal)
            .ThenBy(report => report.Position, StringComparer.Ordinal).ThenBy(report => report.Present),
    ];

    private static ServiceDone Last(IEnumerable<ServiceReport> reports)
    {
        var done = reports.Select(report => new ServiceDone(report.On, UnitConversion.Convert(report.Odometer, "km")));
        return done.OrderByDescending(one => one.On).ThenByDescending(one => one.OdometerKm).First();
    }

    private static Workshop Place(WorkshopDescription? described)
    {
        Audience? worker = described?.Audience switch { "owner" => Audience.Owner, "technician" => Audience.Technician, _ => null };
        return new Workshop(described?.Lift, described?.Minutes, worker);
    }
}
