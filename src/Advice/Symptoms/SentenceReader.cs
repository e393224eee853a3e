using System.Collections.Frozen;

namespace Advice.Symptoms;

/// <summary>Reads the sentences of one text in order and collects what they report.</summary>
/// <param name="text">The text.</param>
/// <param name="words">Its words.</param>
/// <param name="known">What is known whatever the text.</param>
/// <param name="patient">Whether the text says nothing else, so that less sure ways of reading are tried.</param>
internal sealed class SentenceReader(string text, IReadOnlyList<Word> words, ReadingKnowledge known, bool patient = false)
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
    private readonly Lazy<List<SystemMention>> mentions = new(() => [.. known.Systems.Find(text, words)]);
    private readonly List<Statement> statements = [];
    private List<Statement> before = [];
    private List<string> scene = [];

    /// <summary>Reads the next sentence.</summary>
    /// <returns>Whether anything was recognised.</returns>
    public bool Read(IReadOnlyList<Word> sentence)
    {
        var possible = known.Circumstances.Find(sentence);
        var content = sentence.Where(w => w.Kind == WordKind.Content).ToList();
        var candidates = known.Symptoms.Find(content, ComplaintReader.LeastGuess, patient).Where(s => !possible.Any(c => s.IsWithin(c) || s.IsMostly(c)) && !IsBeside(s, sentence)).ToList();
        candidates.RemoveAll(c => candidates.Exists(c.LeavesOutNegation));
        var resemblance = new Lazy<Resemblance>(() => known.Opinion.Value.On(content));
        var found = Selection.Take(candidates.Where(c => c.Confidence >= ComplaintReader.LeastConfidence), used, new SharedSubject(words));
        if (found.Count > 0)
            Reconsider(found, content, resemblance);
        else if (patient && resemblance.Value.Surest() is { } alike && !new Denial(words, used).Governs(alike))
            found.Add(alike);
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
        before = here;
        Inklings.Add(new(() => [.. new Inklings(text, sentence, here, candidates, resemblance.Value).All()]));
        if (found.Count > 0 || attached)
            return true;
        Unsure[sentence[0].Sentence] = new(() => [.. Surest(Meant(candidates).Concat(resemblance.Value.Of(MostGuesses)))]);
        return false;
    }

    /// <summary>Whether a phrase tells of work that was done, of what a person does or of a part that cannot do it.</summary>
    private bool IsBeside(PhraseMatch match, IReadOnlyList<Word> sentence) =>
        ServiceWords.IsWorkDone(match, sentence) || PersonActing.Is(match, words) || known.Bearers.Denies(match, sentence, mentions);

    /// <summary>What the sentences that were not understood may mean, by their number.</summary>
    public Dictionary<int, Lazy<IReadOnlyList<Guess>>> Unsure { get; } = [];

    /// <summary>What each sentence says of symptoms that were not read from it.</summary>
    public List<Lazy<IReadOnlyList<Inkling>>> Inklings { get; } = [];

    /// <summary>The surest of some meanings.</summary>
    private static IEnumerable<Guess> Surest(IEnumerable<Guess> guesses) => guesses
        .GroupBy(g => g.Symptom, StringComparer.Ordinal).Select(g => g.MaxBy(one => one.Confidence)!)
        .OrderByDescending(g => g.Confidence).ThenBy(g => g.Symptom, StringComparer.Ordinal).Take(MostGuesses);

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

    /// <summary>
    /// Takes away what phrases say by chance: the words of a phrase stand in sentences that say something else. What may forbid driving gives way only to
    /// what may forbid it too.
    /// </summary>
    private void Reconsider(List<PhraseMatch> found, List<Word> content, Lazy<Resemblance> resemblance)
    {
        var denial = new Denial(words, used);
        var first = found.ToList();
        var whole = new Lazy<string?>(() => resemblance.Value.Of(1) is [var surest] ? surest.Symptom : null);
        foreach (var match in first.FindAll(f => !denial.Governs(f) && !denial.IsFeared(f)))
        {
            // What other phrases say is left out, and the clauses in which they say it: a sentence may tell of several things.
            var own = content.FindAll(w => match.Words.Contains(w) || !first.Exists(f => f != match && (f.Words.Contains(w) || (f.IsIn(w.Clause) && !match.IsIn(w.Clause)))));
            // A phrase that is all that is said was written for just that.
            if (own.Count == match.Words.Count)
                continue;
            var judged = own.Count == content.Count ? resemblance.Value : known.Opinion.Value.On(own);
            var better = judged.Instead(match);
            // What is said already is said by other words; and words beside a sign that the sentence as a whole tells of belong to that sign.
            if (better is not null && (found.Exists(f => f.Meaning == better.Meaning) || first.Exists(f => f != match && f.Meaning == whole.Value)))
                continue;
            if (known.Grave.Contains(match.Meaning) ? better is not null && known.Grave.Contains(better.Meaning) : better is not null || judged.IsNothing(match))
                Replace(match, better, found, denial);
        }

        found.RemoveAll(f => found.Exists(longer => longer.IsLearned && f.IsWithin(longer)));
        found.Sort((a, b) => a.First.Index.CompareTo(b.First.Index));
    }

    /// <summary>Puts what is said in the place of what a phrase says, unless it is denied there.</summary>
    private void Replace(PhraseMatch match, PhraseMatch? better, List<PhraseMatch> found, Denial denial)
    {
        var before = used.ToArray();
        found.Remove(match);
        foreach (var word in match.Words.Where(w => !found.Exists(f => f.Words.Contains(w))))
            used[word.Index] = false;
        if (better is null)
            return;
        // Its other words stay free for occasions and positions.
        foreach (var word in better.Words.Where(w => w.Term is "not" or "no" || match.Words.Contains(w)))
            used[word.Index] = true;
        if (denial.Governs(better) || denial.IsFeared(better))
        {
            before.CopyTo(used, 0);
            found.Add(match);
        }
        else
        {
            found.Add(better);
        }
    }

    private List<Statement> Stated(List<PhraseMatch> found, IReadOnlyList<Word> sentence, List<PhraseMatch> candidates, Lazy<Resemblance> resemblance)
    {
        var resembled = new Lazy<IReadOnlyList<Guess>>(() => resemblance.Value.Of(MostGuesses + found.Count));
        var denial = new Denial(words, used);
        var stated = new List<Statement>();
        foreach (var match in found.Where(f => !denial.IsFeared(f)))
        {
            var listed = stated.Count > 0 && (!stated[^1].Present || stated[^1].Match.First.Term == "no") && denial.Continues(stated[^1].Match, match);
            stated.Add(new(match, !listed && !denial.Governs(match) && !denial.IsMended(match, sentence))
            {
                Ceases = denial.Ceases(match),
                ComesBack = denial.ComesBack(match),
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
        var denial = new Denial(words, used);
        return content.Count(w => !around.Exists(c => c.Words.Contains(w))) > MostBesideScene || occasions.Exists(denial.IsWell)
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

        if (!beside.Any(s => s.IsIn(clause)) && new Denial(words, used).IsWell(circumstance))
        {
            var last = candidates.Concat(before).Where(s => s.Match.Last.Index < circumstance.First.Index).MaxBy(s => s.Match.Last.Index);
            if (last is not null)
                here.Add(last.Except(circumstance));
            return last is not null;
        }

        if (candidates.Count == 0 && (sentence.Any(w => Referring.Contains(w.Surface)) || own.TrueForAll(w => w.Term == "when" || circumstance.Words.Contains(w))))
            beside = [.. before.Where(s => !s.IsException).TakeLast(1)];
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
