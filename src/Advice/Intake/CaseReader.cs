using Advice.Documents.Judgements;
using Advice.Documents.Requests;
using Advice.Findings;
using Advice.FreezeFrames;
using Advice.Judging;
using Advice.Knowledge;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;
using Advice.Symptoms;
using Advice.Symptoms.Mentions;

namespace Advice.Intake;

/// <summary>Normalises a checked request into a case.</summary>
public sealed class CaseReader(Catalogue catalogue, ComplaintReader complaints)
{
    private const int UsualSteps = 8;

    private readonly TroubleReading _trouble = new(catalogue);
    private readonly SeveralVehicles _several = new(catalogue.Topics);
    private readonly FindingArithmetic _arithmetic = new(catalogue);
    private readonly FindingTrend _trend = new(catalogue);
    private readonly FindingsReader _findings = new(catalogue);
    private readonly FrameReader _frames = new(catalogue);

    /// <summary>A reader with all words of a rule set.</summary>
    public CaseReader(Catalogue catalogue)
        : this(catalogue, new ComplaintReader(catalogue))
    {
    }

    /// <summary>Reads a request whose shape, ranges and ids were checked.</summary>
    /// <param name="request">The request.</param>
    /// <param name="today">The day that counts where the request names none.</param>
    public CaseReading Read(AdviceRequest request, DateOnly today) => Read(request, complaints.Read(request.Complaint ?? ""), today);

    /// <summary>The same where the complaint was read before.</summary>
    internal CaseReading Read(AdviceRequest request, ComplaintReading reading, DateOnly today)
    {
        var asOf = request.AsOf ?? today;
        var given = request.Symptoms.Select(one => new Report(
            one.Symptom, [.. one.Occasions.Distinct().Order(StringComparer.Ordinal)], one.Position, one.Present)).ToList();
        var stored = StoredCode.Of(request.TroubleCodes.Concat(reading.Codes));
        var codes = stored.Select(one => one.Code).Distinct().ToLookup(catalogue.Codes.ContainsKey);
        var named = SystemsNamed.Of(reading.Mentions);
        var said = Latest(reading.Reports, given);
        // What was taken back still tells what the text was about.
        var signs = given.Concat(reading.Reports).Where(report => report.Present).Select(report => Sign.Symptom(report.Symptom))
            .Concat(codes[true].Select(Sign.Code)).ToList();
        var @case = new Case
        {
            AsOf = asOf,
            Jurisdiction = request.Jurisdiction,
            Vehicle = VehicleReader.Read(request.Vehicle, asOf),
            Reports = Merged([.. said, .. _trouble.Of(reading, named, signs)]),
            SeveralVehicles = _several.AreIn(request.Complaint ?? ""),
            Unsure = request.Unsure.ToHashSet(),
            Complaint = reading,
            Named = codes[true].Any() ? SystemsNamed.None : named,
            Codes = [.. codes[true]],
            Services = HistoryReading.Of(
                request.Services.GroupBy(service => service.Item).ToDictionary(group => group.Key, Last), reading.Services, catalogue.Services.Values, request.Vehicle, asOf),
            Workshop = Place(request.Workshop),
            MostSteps = request.Limit ?? UsualSteps,
        };
        var frame = _frames.Read(request, @case);
        List<FrameFinding> findings = [.. request.Findings.Select(finding => new FrameFinding(finding, [])), .. frame.Taken];
        var found = _findings.Read([.. findings.Select(one => one.Finding)], @case);
        return new CaseReading(
            request, @case with { Outcomes = found.Outcomes, Done = found.Done },
            [.. found.Judgements.Zip(findings, (one, from) => InDepth(one, from.Finding, request, @case) with { FromFreezeFrame = from.Members })],
            found.AcrossAxles, stored, [.. codes[false]], frame.NotTaken, reading,
            !string.IsNullOrWhiteSpace(request.Complaint) || request.Symptoms.Count + request.Unsure.Count > 0);
    }

    private JudgementDocument InDepth(JudgementDocument judgement, FindingReport finding, AdviceRequest request, Case @case) =>
        _arithmetic.Beside(judgement, finding, @case) with { Projection = _trend.Of(finding, request, @case) };

    /// <summary>What the text says and what was answered since: an answer takes the place of what the text says against it. Among the answers the order says nothing.</summary>
    private static List<Report> Latest(IReadOnlyList<Report> text, IReadOnlyList<Report> answers) =>
        [.. text.Where(earlier => !answers.Any(answer => Contradicts(answer, earlier))), .. answers];

    /// <summary>One says that it is there and one that it is not, and the denial covers when and where the other is noticed.</summary>
    private static bool Contradicts(Report one, Report other)
    {
        var (noticed, denied) = one.Present ? (one, other) : (other, one);
        return one.Symptom == other.Symptom && one.Present != other.Present
            && (denied.Occasions.Count == 0 || denied.Occasions.SequenceEqual(noticed.Occasions)) && (denied.Position is null || denied.Position == noticed.Position);
    }

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
        var done = reports.Select(report => new ServiceDone(report.On, UnitConversion.Convert(report.Odometer, "km"), Given(report.Interval)))
            .OrderByDescending(one => one.On).ThenByDescending(one => one.OdometerKm).ToList();
        return done[0] with { MakersInterval = done.Select(one => one.MakersInterval).FirstOrDefault(interval => interval is not null) };
    }

    private static Interval? Given(SuppliedInterval? interval) =>
        interval is null ? null : Interval.Given(UnitConversion.Convert(interval.Distance, "km"), interval.Years);

    private static Workshop Place(WorkshopDescription? described)
    {
        Audience? worker = described?.Audience switch { "owner" => Audience.Owner, "technician" => Audience.Technician, _ => null };
        return new Workshop(described?.Lift, described?.Minutes, worker);
    }
}
