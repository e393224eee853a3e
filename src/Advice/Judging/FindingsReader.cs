using Advice.Documents.Requests;
using Advice.Knowledge;
using Advice.Knowledge.Words;

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
    /// <param name="case">The day, the vehicle, the law and the reader.</param>
    public FindingsReading Read(IReadOnlyList<FindingReport> findings, Case @case)
    {
        var each = findings.Select(finding => _each.Judge(finding, @case)).ToList();
        var axles = _axles.Judge(findings, @case);
        var stated = findings.Select(finding => finding.Check).ToHashSet();
        var own = each.Where((one, i) => one.Outcome is { } outcome && IsLatest(findings[i], findings) && (outcome.Value is not null || !IsOld(findings[i], @case)));
        var implied = axles.Where(one => one.Outcome is { } outcome && !stated.Contains(outcome.Check));
        return new FindingsReading(
            [.. each.Select((one, i) => one.Document with { Latest = IsLatest(findings[i], findings), Note = Note(one.Document.Note, findings, i, @case) })],
            [.. axles.Select(one => one.Document)],
            [.. own.Concat(implied).Select(one => one.Outcome!)],
            findings.Where(finding => !IsOld(finding, @case)).Select(finding => finding.Check).ToHashSet());
    }

    private static bool IsOld(FindingReport finding, Case @case) => finding.On is { } on && @case.AsOf.DayNumber - on.DayNumber > DaysThatCount;

    /// <summary>What is not dated was found now.</summary>
    private static bool IsLatest(FindingReport finding, IReadOnlyList<FindingReport> findings) => finding.On is not { } on
        || !findings.Any(other => other.Check == finding.Check && other.Position == finding.Position && (other.On is not { } later || later > on));

    private string? Note(string? note, IReadOnlyList<FindingReport> findings, int at, Case @case)
    {
        var notes = new[]
        {
            note,
            NotDone(findings, at, @case.Workshop.Reader),
            !IsLatest(findings[at], findings) ? catalogue.Say(@case.Workshop.Reader, Sentences.LaterFinding)
            : IsOld(findings[at], @case) ? catalogue.Say(@case.Workshop.Reader, Sentences.CheckAgain) : null,
        }.OfType<string>().ToList();
        return notes.Count == 0 ? null : string.Join(' ', notes);
    }

    /// <summary>A check counts as done wherever it was done first; the last of its findings names the places of which nothing is known.</summary>
    private string? NotDone(IReadOnlyList<FindingReport> findings, int at, Audience reader)
    {
        var check = catalogue.Checks[findings[at].Check];
        var where = findings.Where(finding => finding.Check == check.Id).Select(finding => finding.Position).ToList();
        if (where.Contains(null) || findings.Skip(at + 1).Any(finding => finding.Check == check.Id))
            return null;
        var open = check.Places.Where(place => !where.Exists(position => catalogue.PositionsOverlap(place, position!)))
            .Select(place => place.Replace('-', ' ')).ToList();
        return open.Count == 0 ? null : catalogue.Say(reader, Sentences.PlacesOpen, string.Join(", ", open));
    }
}
