using Advice.Documents;
using Advice.Knowledge;
using Advice.Vehicles;

namespace Advice.Judging;

/// <summary>Judges all findings of a request, each for itself and left against right.</summary>
public sealed class FindingsReader(Catalogue catalogue)
{
    /// <summary>After so many days a result is one of last time: what was good need not be so now, and the check is worth doing again.</summary>
    private const int DaysThatCount = 90;

    private readonly FindingJudge _each = new(catalogue, new LimitChoice(catalogue));
    private readonly AxleJudge _axles = new(catalogue, new LimitChoice(catalogue));

    /// <summary>Reads findings whose ids, units and values were checked.</summary>
    /// <param name="findings">The findings.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="jurisdiction">The jurisdiction; null = not stated.</param>
    /// <param name="asOf">The day for which they are read.</param>
    public FindingsReading Read(IReadOnlyList<FindingReport> findings, Vehicle vehicle, string? jurisdiction, DateOnly asOf)
    {
        bool IsOld(FindingReport finding) => finding.On is { } on && asOf.DayNumber - on.DayNumber > DaysThatCount;
        var each = findings.Select(finding => _each.Judge(finding, vehicle, jurisdiction)).ToList();
        var axles = _axles.Judge(findings, vehicle, jurisdiction);
        var (stated, done) = (findings.Select(finding => finding.Check).ToHashSet(), findings.Where(finding => !IsOld(finding)).Select(finding => finding.Check).ToHashSet());
        var own = each.Where((one, i) => one.Outcome is { } outcome && (outcome.Value is not null || !IsOld(findings[i])));
        var implied = axles.Where(one => one.Outcome is { } outcome && !stated.Contains(outcome.Check));
        return new FindingsReading(
            [.. each.Select((one, i) => one.Document with { Note = Notes(one.Document.Note, NotDone(findings, i), IsOld(findings[i]) ? "This was some time ago; check it again." : null) })],
            [.. axles.Select(one => one.Document)],
            [.. own.Concat(implied).Select(one => one.Outcome!)],
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

    private static string? Notes(params string?[] notes) => notes.OfType<string>().ToList() is { Count: > 0 } some ? string.Join(' ', some) : null;
}
