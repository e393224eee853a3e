using System.Collections.Frozen;
using Advice.Knowledge;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;
using Advice.Symptoms.Denials;
using Advice.Symptoms.Mentions;
using Advice.Symptoms.Onsets;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Snapshots;
using Advice.Symptoms.Words;

namespace Advice.Symptoms;

/// <summary>
/// Reads what a driver writes or says in English: which symptoms are noticed or denied, when and where, and which trouble codes are named.
/// It knows the phrases and sentences of the vocabulary and what is learned from them; what is like none of them is given back as not understood.
/// </summary>
public sealed class ComplaintReader
{
    /// <summary>Below this confidence nothing becomes a report.</summary>
    public const double LeastConfidence = 0.6;

    /// <summary>Below this confidence it is not even worth a question.</summary>
    public const double LeastGuess = 0.4;

    /// <summary>So many words read so surely are a complaint, whatever else the text names.</summary>
    private const int LeastClearWords = 4;
    private const double Clear = 0.85;

    /// <summary>Words of one who complains, whatever of.</summary>
    private static readonly FrozenSet<string> Complaining = WordSet.Of("unsafe dangerous danger hazard suddenly recall crash crashed stranded towed happened happens happening");

    private readonly Vocabulary vocabulary;
    private readonly PhrasesRead phrases;
    private readonly ReadingKnowledge known;
    private readonly ServiceWords services;
    private readonly Subject subject;

    /// <summary>A reader with all words of a rule set. What phrases say of a symptom that a rule to stop asks for is never taken for chance.</summary>
    public ComplaintReader(Catalogue catalogue)
        : this(
            catalogue.Symptoms.Values, catalogue.Occasions.Values, catalogue.Positions.Values, catalogue.Systems,
            catalogue.Services.Values.OrderBy(item => item.Id, StringComparer.Ordinal), catalogue.Topics,
            catalogue.Rules.Values.OfType<DrivingRule>().Where(rule => rule.Advice == DrivingAdvice.Stop && rule.Symptoms.Count == 1).SelectMany(rule => rule.Symptoms).ToHashSet(), catalogue.Learned, new(catalogue))
    {
    }

    /// <summary>
    /// A reader of these symptoms, occasions and positions, and of the words for these systems, service items and topics. What phrases say of
    /// <paramref name="grave"/> symptoms, by id, is never taken for chance. What another reader of the same symptoms <paramref name="learned"/> is not learned again.
    /// </summary>
    public ComplaintReader(
        IEnumerable<Symptom> symptoms, IEnumerable<Occasion> occasions, IEnumerable<Position> positions, IReadOnlyList<VehicleSystem>? systems = null,
        IEnumerable<ServiceItem>? services = null, IReadOnlyList<Topic>? topics = null, IReadOnlySet<string>? grave = null,
        ReadOnlyMemory<byte> learned = default)
        : this(symptoms, occasions, positions, systems, services, topics, grave, learned, Bearers.Any)
    {
    }

    private ComplaintReader(
        IEnumerable<Symptom> symptoms, IEnumerable<Occasion> occasions, IEnumerable<Position> positions, IReadOnlyList<VehicleSystem>? systems,
        IEnumerable<ServiceItem>? services, IReadOnlyList<Topic>? topics, IReadOnlySet<string>? grave, ReadOnlyMemory<byte> learned, Bearers bearers)
    {
        var work = (services ?? []).ToList();
        var (signs, when, where) = (symptoms.OrderBy(s => s.Id, StringComparer.Ordinal).ToList(), occasions.ToList(), positions.ToList());
        var (read, opinion) = learned.IsEmpty ? (null, default) : Parts(learned);
        var words = read?.Words ?? Vocabulary.WordsOf(signs.SelectMany(s => s.Phrases).Concat(when.SelectMany(o => o.Phrases)).Concat(where.SelectMany(p => p.Phrases))
            .Concat((systems ?? []).SelectMany(s => s.Words.Concat(s.Hints))).Concat(work.SelectMany(s => s.Phrases)));
        vocabulary = new(words);
        phrases = read ?? PhrasesRead.Of(words, vocabulary, signs, when, where, work);
        this.services = new(work, phrases.Services);
        var troubles = (systems ?? []).Select(s => s.Trouble).ToHashSet();
        known = new(
            new(phrases.Symptoms, gaps: 3),
            new(when, where, phrases.Circumstances),
            new(systems ?? [], vocabulary),
            new(() => read is not null ? new(opinion) : new(
                [.. signs.Where(s => !troubles.Contains(s.Id))], [.. (topics ?? []).Where(topic => topic.Kind == TopicKind.Nothing).SelectMany(topic => topic.Words)], vocabulary)),
            grave ?? FrozenSet<string>.Empty, bearers);
        subject = new(topics ?? []);
    }

    /// <summary>What it made of all phrases and learned from them and all sentences, so that a reader of the same need not.</summary>
    public ReadOnlyMemory<byte> Learned()
    {
        using var content = new MemoryStream();
        using var writer = new BinaryWriter(content);
        phrases.Write(writer);
        known.Opinion.Value.Write(writer);
        return content.ToArray();
    }

    private static (PhrasesRead Phrases, ReadOnlyMemory<byte> Opinion) Parts(ReadOnlyMemory<byte> learned)
    {
        using var bytes = WrittenBytes.Open(learned);
        return (PhrasesRead.Read(bytes), learned[(int)bytes.BaseStream.Position..]);
    }

    /// <summary>Reads a complaint.</summary>
    /// <param name="complaint">Free text, at most a few pages; anything goes.</param>
    public ComplaintReading Read(string complaint)
    {
        ArgumentNullException.ThrowIfNull(complaint);
        var all = WordSplitter.Split(complaint);
        var heard = vocabulary.Read(all);
        var told = new Lazy<SentencesRead>(() => Read(complaint, heard));
        var elsewhere = subject.Elsewhere(
            all, heard.Where(w => w.Is("<trouble>")).Select(w => w.Sentence).ToHashSet(),
            word => vocabulary.Knows(word.Text) && told.Value.Reports.Any(report => report.Start <= word.Start && word.Start < report.End),
            () => told.Value.Reports.Any(report => report.Confidence >= Clear && heard.Count(w => w.Kind == WordKind.Content && report.Start <= w.Start && w.Start < report.End) >= LeastClearWords)
                && known.Systems.Find(complaint, heard).Any());
        var raw = all.FindAll(w => !elsewhere.Contains(w.Sentence));
        var words = elsewhere.Count == 0 ? heard : vocabulary.Read(raw);
        var codes = TroubleCodeScanner.Scan(complaint, all);
        var onsets = OnsetScanner.Scan(complaint, raw);
        var reading = elsewhere.Count == 0 ? told.Value : Read(complaint, words);
        if (reading.Reports.Count == 0)
            reading = Read(complaint, words, reading with { Left = words.Select(w => w.Clause).ToHashSet() });
        else if (reading.Left.Count > 0)
            reading = Read(complaint, words, reading);
        var mentions = known.Systems.Find(complaint, words).ToList();
        var drives = subject.IsDriving(raw);
        var services = this.services.Find(complaint, words, onsets, mentions, DistanceScanner.Scan(raw)).ToList();
        var sentences = all.GroupBy(w => w.Sentence).ToList();
        var understood = codes.Select(c => c.Sentence).Concat(reading.Understood).Concat(reading.Reports.Count > 0 ? reading.Well : [])
            .Concat(sentences.Where(s => services.Exists(m => s.First().Start <= m.Start && m.End <= s.Last().End)).Select(s => s.Key)).ToHashSet();
        var unread = sentences.Where(s => !understood.Contains(s.Key)).Select(s => new UnreadSentence(
            Excerpt.Of(complaint, s.First().Start, s.Last().End), s.First().Start, s.Last().End)
        {
            Unsure = reading.Unsure.GetValueOrDefault(s.Key),
        });
        return new(
            [.. reading.Reports.Select(r => InTime(r, sentences, onsets))], [.. codes.Select(c => c.Code)], [.. unread], services, mentions,
            drives && StatesTrouble(words, reading.Reports))
        {
            Half = new(() => [.. reading.Inklings.SelectMany(sentence => sentence.Value).OrderByDescending(one => one.IsSaid).DistinctBy(one => one.Symptom)]),
        };
    }

    /// <summary>The report with since when and how constantly its sentence says.</summary>
    private static Report InTime(Report report, List<IGrouping<int, RawWord>> sentences, List<Onset> onsets)
    {
        var own = sentences.Find(s => s.First().Start <= report.Start && report.Start < s.Last().End)?.ToList() ?? [];
        var since = onsets.FindAll(o => own.Count > 0 && o.Sentence == own[0].Sentence);
        return report with
        {
            Since = since.MinBy(o => Math.Abs(o.Start - report.Start!.Value)) ?? (onsets.Count == 1 && sentences.Count <= 3 ? onsets[0] : null),
            Intermittent = Recurrence.Of(own),
        };
    }

    /// <summary>Whether a word for trouble stands there that is not denied: neither "not" stands before it nor is it a part of what is denied.</summary>
    private static bool StatesTrouble(List<Word> words, IReadOnlyList<Report> reports) =>
        words.Exists(w => (w.Is("<trouble>") || Complaining.Contains(w.Surface)) && (w.Index == 0 || words[w.Index - 1].Term is not ("not" or "no" or "nothing"))
            && !reports.Any(r => !r.Present && r.Start <= w.Start && w.End <= r.End));

    private SentencesRead Read(string complaint, List<Word> words, SentencesRead? before = null)
    {
        var reading = new SentenceReader(complaint, words, known, before);
        var understood = words.GroupBy(w => w.Sentence).Where(s => reading.Read([.. s])).Select(s => s.Key).ToList();
        return new(reading.Reports(), understood, reading.Well, reading.Left, reading.Unsure, reading.Inklings);
    }
}
