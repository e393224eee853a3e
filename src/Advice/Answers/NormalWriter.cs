using Advice.Documents;
using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Rules;

namespace Advice.Answers;

/// <summary>What of the reports may be no fault.</summary>
internal static class NormalWriter
{
    private const double MoreOftenThanNot = 0.5;

    /// <summary>
    /// Each explanation once. Beside an alarm, what is normal at times only where such a time was told of: whoever reads that a pedal goes down a little at
    /// starting does not take a pedal on the floor for what it is.
    /// </summary>
    /// <param name="advised">What was concluded.</param>
    /// <param name="driving">Whether it may be driven.</param>
    public static IReadOnlyList<NormalDocument> Write(Advised advised, DrivingAdvice driving) =>
    [
        .. advised.Evidence.Normals.Where(normal => driving < DrivingAdvice.WorkshopOnly || SpeaksOfWhatWasTold(normal))
            .Select(normal => normal.Rule)
            .Select(rule => new NormalDocument(rule.Id, rule.Because.For(advised.Case.Workshop.Reader), rule.Source?.ToString()))
            .DistinctBy(note => note.Text),
    ];

    /// <summary>The likeliest explanation where one is likely for everything that was reported; null = not so.</summary>
    /// <param name="advised">What was concluded.</param>
    public static NormalRule? OfAll(Advised advised)
    {
        var likely = advised.Evidence.Normals.Where(normal => normal.Rule.Share >= MoreOftenThanNot).ToList();
        var explained = likely.Select(normal => normal.Rule.Symptom).ToHashSet();
        return advised.Case.Reports.Where(report => report.Present).All(report => explained.Contains(report.Symptom))
            ? likely.Select(normal => normal.Rule).OrderByDescending(rule => rule.Share).ThenBy(rule => rule.Id, StringComparer.Ordinal).FirstOrDefault()
            : null;
    }

    private static bool SpeaksOfWhatWasTold(NormalReport normal) =>
        normal.Rule.Occasions.Count == 0 || normal.Rule.Occasions.Intersect(normal.Seen.Occasions).Any();
}
