using System.Collections.Frozen;

namespace Advice.Symptoms;

/// <summary>Reads the sentences of one text in order and collects what they report.</summary>
internal sealed class SentenceReader(string text, IReadOnlyList<Word> words, PhraseIndex symptoms, Circumstances circumstances)
{
    /// <summary>Words by which a sentence refers to the one before it: "It only happens when cold".</summary>
    private static readonly FrozenSet<string> Referring = new[]
        { "happens", "happen", "happened", "happening", "occurs", "occurred", "only", "mostly", "mainly", "especially", "worse" }
        .ToFrozenSet(StringComparer.Ordinal);

    private readonly bool[] used = new bool[words.Count];
    private readonly List<Statement> statements = [];
    private List<Statement> before = [];

    /// <summary>Reads the next sentence.</summary>
    /// <returns>Whether anything was recognised.</returns>
    public bool Read(IReadOnlyList<Word> sentence)
    {
        var found = Selection.Take(
            symptoms.Find([.. sentence.Where(w => w.Kind == WordKind.Content)], ComplaintReader.LeastConfidence), used);
        var around = circumstances.Find(sentence, used);
        var here = Stated(found);
        foreach (var circumstance in around)
            Attach(circumstance, here, sentence);
        statements.AddRange(here);
        before = here;
        return found.Count + around.Count > 0;
    }

    /// <summary>All reports so far, equal ones merged.</summary>
    public IReadOnlyList<Report> Reports()
    {
        var reports = statements.SelectMany(Reports).ToList();
        var present = reports.Where(r => r.Present).Select(r => r.Symptom).ToHashSet(StringComparer.Ordinal);
        return [.. reports
            .Where(r => r.Present || r.Occasions.Count > 0 || !present.Contains(r.Symptom))
            .GroupBy(r => (r.Symptom, string.Join(' ', r.Occasions), r.Position, r.Present))
            .Select(g => g.MaxBy(r => r.Confidence)!)];
    }

    private List<Statement> Stated(List<PhraseMatch> found)
    {
        var denial = new Denial(words, used);
        var stated = new List<Statement>();
        foreach (var match in found)
        {
            var listed = stated.Count > 0 && !stated[^1].Present && denial.Continues(stated[^1].Match, match);
            stated.Add(new(match, !listed && !denial.Governs(match)) { Ceases = denial.Ceases(match) });
        }

        return stated;
    }

    private void Attach(PhraseMatch circumstance, List<Statement> here, IReadOnlyList<Word> sentence)
    {
        var clause = circumstance.First.Clause;
        if (circumstances.IsPosition(circumstance))
        {
            foreach (var statement in here.Where(s => s.IsIn(clause)))
                statement.Place(circumstance);
            return;
        }

        var candidates = here.Where(s => !s.IsException).ToList();
        if (!candidates.Any(s => s.IsIn(clause)) && new Denial(words, used).IsWell(circumstance))
        {
            var last = candidates.Concat(before).Where(s => s.Match.Last.Index < circumstance.First.Index).MaxBy(s => s.Match.Last.Index);
            if (last is not null)
                here.Add(last.Except(circumstance));
            return;
        }

        if (candidates.Count == 0 && sentence.Any(w => Referring.Contains(w.Surface)))
            before.LastOrDefault(s => !s.IsException)?.Occasions.Add(circumstance.Meaning);
        var opensWithWhen = sentence.FirstOrDefault(w => w.Clause == clause && w.Kind == WordKind.Content)?.Term == "when";
        foreach (var statement in Attachment.Beside(candidates, clause, opensWithWhen))
            statement.Occasions.Add(circumstance.Meaning);
    }

    private IEnumerable<Report> Reports(Statement statement)
    {
        var occasions = circumstances.Narrowest(statement.Occasions);
        var words = Excerpt.Of(text, statement.Match.First.Start, statement.Match.Words.Max(w => w.End));
        var report = new Report(
            statement.Match.Meaning, occasions, statement.Position, statement.Present, words, statement.Match.Confidence);
        if (!statement.Ceases || !statement.Present)
            return [report];
        var ceased = report with { Present = false };
        return occasions.Count == 0 ? [ceased] : [report with { Occasions = [] }, ceased];
    }
}
