using Advice.Knowledge;

namespace Advice.Symptoms;

/// <summary>
/// Reads what a driver writes or says in English: which symptoms are noticed or denied, when and where, and which trouble codes are named.
/// It knows the phrases of the vocabulary and nothing else; what matches none of them well enough is given back as not understood.
/// </summary>
public sealed class ComplaintReader
{
    /// <summary>Below this confidence nothing becomes a report.</summary>
    public const double LeastConfidence = 0.6;

    private readonly Vocabulary vocabulary;
    private readonly PhraseIndex symptoms;
    private readonly Circumstances circumstances;
    private readonly SystemWords systems;

    /// <summary>A reader of these symptoms, occasions and positions, and of the words for these systems.</summary>
    public ComplaintReader(
        IEnumerable<Symptom> symptoms, IEnumerable<Occasion> occasions, IEnumerable<Position> positions, IReadOnlyList<VehicleSystem>? systems = null)
    {
        var (known, when, where) = (symptoms.ToList(), occasions.ToList(), positions.ToList());
        vocabulary = new(known.SelectMany(s => s.Phrases).Concat(when.SelectMany(o => o.Phrases)).Concat(where.SelectMany(p => p.Phrases))
            .Concat((systems ?? []).SelectMany(s => s.Words.Concat(s.Hints))));
        this.systems = new(systems ?? [], vocabulary);
        this.symptoms = new(
            known.SelectMany(s => s.Phrases.Select(p => Parse(s.Id, p))).Concat(Usage.List(Usage.Harmless).Select(i => Parse("", i))).Where(p => p.Terms.Length > 0), gaps: 3, strict: false);
        circumstances = new(when, where, vocabulary);
    }

    /// <summary>Reads a complaint.</summary>
    /// <param name="complaint">Free text, at most a few pages; anything goes.</param>
    public ComplaintReading Read(string complaint)
    {
        ArgumentNullException.ThrowIfNull(complaint);
        var raw = WordSplitter.Split(complaint);
        var codes = TroubleCodeScanner.Scan(raw);
        var words = vocabulary.Read(raw);
        var (reports, sentences) = Read(complaint, words, patient: false);
        if (reports.Count == 0)
            (reports, sentences) = Read(complaint, words, patient: true);
        var understood = codes.Select(c => c.Sentence).Concat(sentences).ToHashSet();
        return new(reports, [.. codes.Select(c => c.Code)], [.. Excerpt.Sentences(complaint, raw, understood)],
            [.. systems.Find(complaint, words)], StatesTrouble(words));
    }

    private static bool StatesTrouble(List<Word> words) =>
        words.Exists(w => w.Is("<trouble>") && (w.Index == 0 || words[w.Index - 1].Term is not ("not" or "no")));

    private (IReadOnlyList<Report> Reports, List<int> Understood) Read(string complaint, List<Word> words, bool patient)
    {
        var reading = new SentenceReader(complaint, words, symptoms, circumstances, patient);
        var understood = words.GroupBy(w => w.Sentence).Where(s => reading.Read([.. s])).Select(s => s.Key).ToList();
        return (reading.Reports(), understood);
    }

    private Phrase Parse(string id, string text) =>
        new(id, [.. vocabulary.ReadPhrase(text, w => w.Kind == WordKind.Content).Select(w => w.Term)], null);
}
