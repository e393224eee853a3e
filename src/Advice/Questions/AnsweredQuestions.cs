using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Advice.Questions;

/// <summary>Which symptoms need not be asked for, since what is known of the case tells whether they are there.</summary>
internal sealed class AnsweredQuestions(Catalogue catalogue)
{
    private readonly ILookup<string, string> _answers = catalogue.Symptoms.Values
        .SelectMany(symptom => symptom.AnsweredBy, (symptom, by) => (by, symptom.Id)).ToLookup(one => one.by, one => one.Id);

    private readonly ILookup<string, string> _finer = catalogue.Rules.Values.OfType<ImpliesRule>()
        .Where(rule => rule.Sign.Kind == SignKind.Symptom && rule.Implied.Kind == SignKind.Symptom && rule.Occasions.Count == 0)
        .ToLookup(rule => rule.Implied.Id, rule => rule.Sign.Id);

    private readonly ILookup<string, (string Symptom, IReadOnlyList<string> Occasions)> _answersOn = catalogue.Symptoms.Values
        .SelectMany(symptom => symptom.AnsweredOn, (symptom, on) => (on.Symptom, Answered: (symptom.Id, on.Occasions))).ToLookup(one => one.Symptom, one => one.Answered);

    /// <summary>Ids of the symptoms: reported or denied, following from what was, told by the words of the text or given up as unknown.</summary>
    public IReadOnlySet<string> Of(Advised advised)
    {
        var @case = advised.Case;
        var present = @case.Reports.Where(report => report.Present).Select(report => report.Symptom)
            .Concat(advised.Evidence.Implied.Where(one => one.Implied.Present).Select(one => one.Implied.Sign.Id)).ToHashSet();
        var denied = @case.Reports.Where(report => !report.Present && report.Occasions.Count == 0 && !present.Contains(report.Symptom)).Select(report => report.Symptom);
        var told = @case.Reports.Where(report => report.Present).SelectMany(report => _answersOn[report.Symptom]
            .Where(on => report.Occasions.Any(stated => on.Occasions.Any(asked => catalogue.OccasionFits(stated, asked)))).Select(on => on.Symptom));
        return advised.Spoken.Concat(@case.Unsure).Concat(told).Concat(Following(present, _answers)).Concat(Following(denied, _finer))
            .Concat(@case.Inklings.Where(one => one.IsSaid).Select(one => one.Symptom)).ToHashSet();
    }

    private static HashSet<string> Following(IEnumerable<string> from, ILookup<string, string> steps)
    {
        var (reached, open) = (new HashSet<string>(), new Queue<string>(from));
        while (open.TryDequeue(out var one))
        {
            foreach (var next in steps[one].Where(reached.Add))
                open.Enqueue(next);
        }

        return reached;
    }
}
