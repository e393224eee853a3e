using Advice.Documents;
using Advice.Findings;
using Advice.Knowledge;
using Advice.Vehicles;

namespace Advice.Judging;

/// <summary>Judges all findings of a request, each for itself and left against right.</summary>
public sealed class FindingsReader(Catalogue catalogue)
{
    private readonly FindingJudge _each = new(catalogue, new LimitChoice(catalogue));
    private readonly AxleJudge _axles = new(catalogue, new LimitChoice(catalogue));

    /// <summary>Reads findings whose ids, units and values were checked.</summary>
    public FindingsReading Read(IReadOnlyList<FindingReport> findings, Vehicle vehicle, string? jurisdiction)
    {
        var each = findings.Select(finding => _each.Judge(finding, vehicle, jurisdiction)).ToList();
        var axles = _axles.Judge(findings, vehicle, jurisdiction);
        var done = findings.Select(finding => finding.Check).ToHashSet();
        var implied = axles.Select(one => one.Outcome).OfType<Outcome>().Where(outcome => !done.Contains(outcome.Check));
        return new FindingsReading(
            [.. each.Select((one, i) => one.Document with { Note = Joined(one.Document.Note, NotDone(findings, i)) })],
            [.. axles.Select(one => one.Document)],
            [.. each.Select(one => one.Outcome).OfType<Outcome>(), .. implied],
            done);
    }

    /// <summary>A check counts as done wherever it was done first; the last of its findings names the places of which nothing is known.</summary>
    private string? NotDone(IReadOnlyList<FindingReport> findings, int at)
    {
        var check = catalogue.Checks[findings[at].Check];
        var where = findings.Where(finding => finding.Check == check.Id).Select(finding => finding.Position).ToList();
        if (where.Contains(null) || findings.Skip(at + 1).Any(finding => finding.Check == check.Id))
            return null;
        var open = check.Places.Where(place => !where.Exists(position => catalogue.PositionsOverlap(place, position!)))
            .Select(place => place.Replace('-', ' ')).ToList();
        return open.Count == 0 ? null : $"Nothing is reported of {string.Join(", ", open)}.";
    }

    private static string? Joined(string? note, string? more) => note is null ? more : more is null ? note : $"{note} {more}";
}
