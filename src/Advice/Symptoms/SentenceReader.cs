using System.Collections.Frozen;
using Advice.Symptoms.Denials;
using Advice.Symptoms.Mentions;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Resemblances;
using Advice.Symptoms.Words;

namespace Advice.Symptoms;

/// <summary>Reads the sentences of one text in order and collects what they report.</summary>
/// <param name="text">The text.</param>
/// <param name="words">Its words.</param>
/// <param name="known">What is known whatever the text.</param>
/// <param name="before">What was read of it before; what was left then is read by less sure ways.</param>
internal sealed class SentenceReader(string text, IReadOnlyList<Word> words, ReadingKnowledge known, SentencesRead? before = null)
{
    /// <summary>Words that are read so surely have no other meaning.</summary>
    private const double Clear = 0.85;

    /// <summary>The sentence as a whole must resemble what is read by so much more than anything else.</summary>
    private const double MuchNearer = 1.5;

    private const int MostGuesses = 3;

    /// <summary>A sentence with more words beside its occasions says something of its own.</summary>
    private const int MostBesideScene = 2;

    /// <summary>Words by which a sentence refers to the one before it: "It only happens when cold".</summary>
    private static readonly FrozenSet<string> Referring = WordSet.Of("happens happen happened happening occurs occurred only mostly mainly especially worse");

    private readonly bool[] used = new bool[words.Count];
    private readonly AskedCause asked = new(text, words);
    private readonly Lazy<List<SystemMention>> mentions = new(() => [.. known.Systems.Find(text, words)]);
    private readonly WellBeing wellBeing = new(words);
    private readonly List<Statement> statements = [];
    private readonly HashSet<int> left = [];
    private List<Statement> last = [];
    private List<string> scene = [];

    private ChanceFinds Chance => field ??= new(words, used, known);

    private LeftClauses LeftClauses => field ??= new(words, used);

    /// <summary>Reads the next sentence.</summary>
    /// <returns>Whether anything was recognised.</returns>
    public bool Read(IReadOnlyList<Word> sentence)
    {
        var possible = known.Circumstances.Find(sentence);
        var content = sentence.Where(w => w.Kind == WordKind.Content).ToList();
        var resemblance = new Lazy<Resemblance>(() => known.Opinion.Value.On(content));
        var patient = sentence.All(IsLeft);
        var (found, candidates) = Find(content, sentence, possible, resemblance, patient);
        if (!patient)
        {
            foreach (var clause in content.Where(IsLeft).GroupBy(w => w.Clause).Select(own => own.ToList()))
                found.AddRange(Find(clause, sentence, possible, new(() => known.Opinion.Value.On(clause)), patient: true).Found);
            found.Sort((a, b) => a.First.Index.CompareTo(b.First.Index));
        }

        var here = Stated(found, sentence, candidates, resemblance);
        foreach (var (statement, position) in Within(here, possible))
            statement.Place(position);
        var around = Selection.Take(possible, used);
        var attachment = new Attachment(around);
        var attached = false;
        foreach (var circumstance in around)
            attached |= Attach(circumstance, here, sentence, attachment);
        foreach (var statement in here.Where(s => s.Occasions.Count == 0))
            statement.Occasions.AddRange(scene);
        statements.AddRange(here);
        scene = here.Count == 0 && !attached ? Scene(around, content) : [];
        if (found.Count == 0 && last.Count > 0 && Continuation.Is(sentence))
            return GoesOn(sentence);
        last = here;
        Inklings.Add(new(() => [.. new Inklings(text, sentence, here, candidates, resemblance.Value).All()]));
        if (found.Count > 0 || attached)
        {
            left.UnionWith(content.GroupBy(w => w.Clause).Where(clause => LeftClauses.StandsAlone(clause) && !found.Exists(f => f.IsIn(clause.Key))).Select(clause => clause.Key));
            return true;
        }

        if (wellBeing.IsAllOf(sentence))
            Well.Add(sentence[0].Sentence);
        else
            left.UnionWith(sentence.Select(w => w.Clause));
        Unsure[sentence[0].Sentence] = new(() => [.. Surest(Meant(candidates).Concat(resemblance.Value.Of(MostGuesses)))]);
        return false;
    }

    /// <summary>What went away and is back is there.</summary>
    private bool GoesOn(IReadOnlyList<Word> sentence)
    {
        foreach (var ended in Continuation.Returns(sentence) ? last.FindAll(s => s.HasEnded) : [])
            statements[statements.IndexOf(ended)] = ended.Back();
        return true;
    }

    /// <summary>What some words of a sentence say.</summary>
    /// <param name="content">The words.</param>
    /// <param name="sentence">The sentence.</param>
    /// <param name="possible">All that could be occasions and positions in it.</param>
    /// <param name="resemblance">What the words resemble.</param>
    /// <param name="patient">Whether nothing was understood of them, so that less sure ways are tried.</param>
    private (List<PhraseMatch> Found, List<PhraseMatch> Candidates) Find(
        List<Word> content, IReadOnlyList<Word> sentence, List<PhraseMatch> possible, Lazy<Resemblance> resemblance, bool patient)
    {
        var candidates = known.Symptoms.Find(content, ComplaintReader.LeastGuess, patient).Where(s => !possible.Any(c => s.IsWithin(c) || s.IsMostly(c)) && !IsBeside(s, sentence)).ToList();
        candidates.RemoveAll(c => candidates.Exists(c.LeavesOutNegation));
        var found = Selection.Take(candidates.Where(c => c.Confidence >= ComplaintReader.LeastConfidence), used, new SharedSubject(words));
        if (found.Count > 0)
            Chance.Reconsider(found, content, resemblance);
        else if (patient && resemblance.Value.Surest() is { } alike && !new Denial(words, used).Governs(alike))
            found.Add(alike);
        // A clause beside others is easily taken for more than it says.
        var noticing = sentence.All(IsLeft) && Noticing.Is(sentence.Where(w => content.Exists(own => own.Clause == w.Clause)));
        foreach (var match in patient && before?.Reports.Count > 0 ? found.FindAll(f => IsTold(f) || Noticing.IsAbsence(content) || !resemblance.Value.IsNews(f, noticing)) : [])
            Chance.Remove(match, found);
        return (found, candidates);
    }

    /// <summary>Whether it was read before.</summary>
    private bool IsTold(PhraseMatch match) => before?.Reports.Any(r => r.Symptom == match.Meaning) == true;

    private bool IsLeft(Word word) => before?.Left.Contains(word.Clause) == true;

    /// <summary>Whether a phrase tells of work that was done, of what a person does or of a part that cannot do it.</summary>
    private bool IsBeside(PhraseMatch match, IReadOnlyList<Word> sentence) =>
        ServiceWords.IsWorkDone(match, sentence) || PersonActing.Is(match, words) || known.Bearers.Denies(match, sentence, mentions);

    /// <summary>Numbers of the clauses of which nothing was understood.</summary>
    public IReadOnlySet<int> Left => left;

    /// <summary>Numbers of the sentences that say no more than that something is well.</summary>
    public HashSet<int> Well { get; } = [];

    /// <summary>What the sentences that were not understood may mean, by their number.</summary>
    public Dictionary<int, Lazy<IReadOnlyList<Guess>>> Unsure { get; } = [];

    /// <summary>What each sentence says of symptoms that were not read from it.</summary>
    public List<Lazy<IReadOnlyList<Inkling>>> Inklings { get; } = [];

    /// <summary>The surest of some meanings.</summary>
    private static IEnumerable<Guess> Surest(IEnumerable<Guess> guesses) => guesses
        .GroupBy(g => g.Symptom, StringComparer.Ordinal).Select(g => g.MaxBy(one => one.Confidence)!)
        .OrderByDescending(g => g.Confidence).ThenBy(g => g.Symptom, StringComparer.Ordinal).Take(MostGuesses);

    /// <summary>All reports so far, equal ones merged. A question about the cause is no report beside what is noticed.</summary>
    public IReadOnlyList<Report> Reports()
    {
        var told = statements.Exists(s => s.Present && !s.IsAsked) ? statements.FindAll(s => !s.IsAsked) : statements;
        var reports = told.SelectMany(Reports).ToList();
        var present = reports.Where(r => r.Present).Select(r => r.Symptom).ToHashSet(StringComparer.Ordinal);
        return [.. reports
            .Where(r => r.Present || r.Occasions.Count > 0 || !present.Contains(r.Symptom))
            .GroupBy(r => (r.Symptom, string.Join(' ', r.Occasions), r.Position, r.Present))
            .Select(g => g.MaxBy(r => r.Confidence)!)];
    }

    private List<Statement> Stated(List<PhraseMatch> found, IReadOnlyList<Word> sentence, List<PhraseMatch> candidates, Lazy<Resemblance> resemblance)
    {
        var resembled = new Lazy<IReadOnlyList<Guess>>(() => resemblance.Value.Of(MostGuesses + found.Count));
        var denial = new Denial(words, used);
        var ending = new Ending(words);
        var stated = new List<Statement>();
        foreach (var match in found.Where(f => !denial.IsFeared(f)))
        {
            var listed = stated.Count > 0 && (!stated[^1].Present || stated[^1].Match.First.Term == "no") && denial.Continues(stated[^1].Match, match);
            stated.Add(new(match, !listed && !denial.Governs(match) && !denial.IsMended(match, sentence))
            {
                Ceases = ending.Ceases(match),
                ComesBack = ending.ComesBack(match),
                HasEnded = ending.HasEnded(match) || ending.Ceases(match),
                IsAsked = !known.Grave.Contains(match.Meaning) && asked.Is(match),
                Rivals = new(() => Rivals(match, found, candidates, resembled.Value)),
            });
        }

        return stated;
    }

    /// <summary>Other meanings of the same words, and what the sentence resembles as a whole, unless words and sentence are clear.</summary>
    private static IReadOnlyList<Guess> Rivals(PhraseMatch match, List<PhraseMatch> found, List<PhraseMatch> candidates, IReadOnlyList<Guess> resembled)
    {
        var others = resembled.Where(g => !found.Exists(f => f.Meaning == g.Symptom)).ToList();
        var own = resembled.FirstOrDefault(g => g.Symptom == match.Meaning)?.Confidence ?? 0;
        if (match.Confidence >= Clear && own > MuchNearer * others.Select(g => g.Confidence).FirstOrDefault())
            return [];
        return [.. Surest(Meant(candidates.Where(c => c.Words.Any(match.Words.Contains))).Where(g => !found.Exists(f => f.Meaning == g.Symptom)).Concat(others))];
    }

    private static IEnumerable<Guess> Meant(IEnumerable<PhraseMatch> candidates) => candidates.Where(c => c.Meaning.Length > 0).Select(c => new Guess(c.Meaning, c.Confidence));

    /// <summary>The occasions of a sentence that sets the scene for the next one and says nothing else: "It is raining. The wipers smear."</summary>
    private List<string> Scene(List<PhraseMatch> around, List<Word> content)
    {
        var occasions = around.FindAll(c => !known.Circumstances.IsPosition(c));
        return content.Count(w => !around.Exists(c => c.Words.Contains(w))) > MostBesideScene || occasions.Exists(wellBeing.IsOn)
            ? [] : [.. occasions.Select(c => c.Meaning)];
    }

    /// <summary>
    /// The positions that begin with words of a statement and go on, "droning from the back left". One that is altogether a part of the
    /// phrase is a part of its meaning.
    /// </summary>
    private IEnumerable<(Statement Statement, PhraseMatch Circumstance)> Within(List<Statement> here, List<PhraseMatch> possible) =>
        from circumstance in Selection.Take(possible, new bool[words.Count])
        from statement in here
        where known.Circumstances.IsPosition(circumstance) && circumstance.Words.Any(statement.Match.Words.Contains)
            && circumstance.Words.Any(w => w.Kind == WordKind.Content && !statement.Match.Words.Contains(w))
            && circumstance.Words.All(w => !used[w.Index] || statement.Match.Words.Contains(w))
        select (statement, circumstance);

    private bool Attach(PhraseMatch circumstance, List<Statement> here, IReadOnlyList<Word> sentence, Attachment attachment)
    {
        var clause = circumstance.First.Clause;
        var own = sentence.Where(w => w.Clause == clause && w.Kind == WordKind.Content).ToList();
        var candidates = here.Where(s => !s.IsException).ToList();
        var beside = attachment.Beside(candidates, circumstance, ahead: own is [{ Term: "when" }, ..]);
        if (known.Circumstances.IsPosition(circumstance))
        {
            var alone = own.All(w => circumstance.Words.Contains(w));
            var placed = beside.Where(s => alone || s.IsIn(clause)).ToList();
            placed.ForEach(s => s.Place(circumstance));
            return placed.Count > 0;
        }

        if (own is [{ Term: "only" }, ..] or [{ Term: "but" }, { Term: "only" }, ..] && here.FindLast(s => s.Match.Last.Index < circumstance.First.Index) is { Present: false, Ceases: false } denied && !denied.IsIn(clause) && !here.Exists(s => s.IsIn(clause)))
        {
            here.Add(denied.Only(circumstance));
            return true;
        }

        if (!beside.Any(s => s.IsIn(clause)) && wellBeing.IsOn(circumstance))
        {
            var nearest = candidates.Concat(last).Where(s => s.Match.Last.Index < circumstance.First.Index).MaxBy(s => s.Match.Last.Index);
            // One that it holds on too is a wide one: it wobbles at 60 and is smooth at 75.
            if (nearest is not null && !nearest.Occasions.Contains(circumstance.Meaning))
                here.Add(nearest.Except(circumstance));
            return nearest is not null;
        }

        if (wellBeing.IsTheSameOn(circumstance))
            return true;

        if (candidates.Count == 0 && (sentence.Any(w => Referring.Contains(w.Surface)) || own.TrueForAll(w => w.Term == "when" || circumstance.Words.Contains(w))))
            beside = [.. last.Where(s => !s.IsException).TakeLast(1)];
        foreach (var statement in beside.Where(s => s.Present || !known.Circumstances.IsEvent(circumstance)))
            statement.Occasions.Add(circumstance.Meaning);
        return beside.Count > 0;
    }

    private IEnumerable<Report> Reports(Statement statement)
    {
        var occasions = known.Circumstances.Narrowest(statement.Occasions);
        var words = Excerpt.Of(text, statement.Match.First.Start, statement.Match.Words.Max(w => w.End));
        var report = new Report(
            statement.Match.Meaning, occasions, statement.Position, statement.Present, words, statement.Match.Confidence)
        {
            Start = statement.Match.First.Start,
            End = statement.Match.Words.Max(w => w.End),
            Rivals = statement.Rivals,
        };
        if (!statement.Ceases || !statement.Present)
            return [report];
        var ceased = report with { Present = false };
        return occasions.Count == 0 ? [statement.ComesBack ? report : ceased] : [report with { Occasions = [] }, ceased];
    }
}
