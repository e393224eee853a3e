using System.Collections.Frozen;
using Advice.Knowledge.Limits;
using Advice.Symptoms.Onsets;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Mentions;

/// <summary>Finds work that was done or never done: "new coil last week", "plugs are the originals", "never serviced", "fluid just changed".</summary>
internal sealed class ServiceWords
{
    private static readonly FrozenSet<string> Doing = WordSet.Of(
        "changed replaced renewed serviced flushed swapped fitted installed rebuilt rotated aligned balanced new done topped changing replacing");

    private static readonly FrozenSet<string> Needing = WordSet.Of("need needs needed should must recommended quoted wants want due would will");
    private static readonly FrozenSet<string> First = WordSet.Of("original originals factory");
    private readonly Dictionary<string, ServiceItem> items;
    private readonly IReadOnlyList<Phrase> phrases;

    /// <summary>Knows these items by their phrases.</summary>
    /// <param name="items">The items.</param>
    /// <param name="phrases">Their phrases, the longest first.</param>
    public ServiceWords(IEnumerable<ServiceItem> items, IReadOnlyList<Phrase> phrases) =>
        (this.items, this.phrases) = (items.ToDictionary(item => item.Id, StringComparer.Ordinal), phrases);

    /// <summary>The mentions, in order, at most one for each clause and item.</summary>
    public IEnumerable<ServiceMention> Find(string text, IReadOnlyList<Word> words, IReadOnlyList<Onset> onsets, IReadOnlyList<SystemMention> systems,
        IReadOnlyList<(int Sentence, int Clause, double Km)> distances)
    {
        var clauses = words.GroupBy(w => w.Clause).Select(g => g.ToList()).ToList();
        foreach (var (number, clause) in clauses.Index())
        {
            var first = clause.Exists(w => First.Contains(w.Surface));
            var verb = clause.Find(w => Doing.Contains(w.Surface) || First.Contains(w.Surface));
            if (verb is null || clause.Exists(w => Needing.Contains(w.Surface)))
                continue;
            var done = !first && !clause.Exists(w => Negation.Is(w) && w.Index < verb.Index);
            var (start, end) = (clause[0].Start, clause[^1].End);
            var daysAgo = done ? Ago(clause, onsets) : null;
            var kmAgo = done ? distances.Where(d => d.Sentence == clause[0].Sentence).OrderByDescending(d => d.Clause == clause[0].Clause).Select(d => (double?)d.Km).FirstOrDefault() : null;
            var about = number > 0 && clauses[number - 1][0].Sentence == clause[0].Sentence && NamesNothing(clause, verb, onsets) ? clauses[number - 1] : clause;
            var items = Items(about);
            var parts = systems.Where(m => about[0].Start <= m.Start && m.End <= about[^1].End).ToList();
            foreach (var item in items)
                yield return new(item.Id, item.System, done, daysAgo, kmAgo, Excerpt.Of(text, start, end), start, end);
            if (items.Count == 0 && (parts.Count > 0 || verb.Surface == "serviced"))
                yield return new(null, parts.FirstOrDefault()?.System, done, daysAgo, kmAgo, Excerpt.Of(text, start, end), start, end);
        }
    }

    private static int? Ago(List<Word> clause, IReadOnlyList<Onset> onsets)
    {
        var onset = onsets.FirstOrDefault(o => o.Clause == clause[0].Clause) ?? onsets.FirstOrDefault(o => o.Sentence == clause[0].Sentence);
        return onset?.DaysAgo ?? (clause.Exists(w => w.Surface is "just" or "freshly" or "only") ? 0 : null);
    }

    /// <summary>Whether a phrase takes work that was done for trouble: "battery replaced last week", unlike "battery had to be replaced".</summary>
    public static bool IsWorkDone(PhraseMatch match, IReadOnlyList<Word> sentence) =>
        match.Classed.Any(w => w.Surface is "replaced" or "changed" or "replacing" or "changing")
        && !sentence.Any(w => w.Clause == match.First.Clause && (Needing.Contains(w.Surface) || w.Surface is "be" or "been" or "requires" or "require"));

    /// <summary>Whether a clause speaks of what the one before it named: "the clutch judders, it was replaced two months ago".</summary>
    private static bool NamesNothing(List<Word> clause, Word verb, IReadOnlyList<Onset> onsets) => clause.TrueForAll(
        word => word == verb || word.Kind != WordKind.Content || word.Term is "not" || onsets.Any(o => o.Start <= word.Start && word.End <= o.End));

    private List<ServiceItem> Items(List<Word> clause)
    {
        var content = clause.Where(w => w.Kind == WordKind.Content).ToList();
        var (named, used) = (new List<ServiceItem>(), new bool[content.Count]);
        foreach (var phrase in phrases)
        {
            var terms = phrase.Terms;
            for (var i = 0; i + terms.Length <= content.Count; i++)
            {
                var places = Enumerable.Range(i, terms.Length).ToList();
                if (!places.TrueForAll(p => content[p].Term == terms[p - i] && !used[p]))
                    continue;
                places.ForEach(p => used[p] = true);
                if (!named.Contains(items[phrase.Meaning]))
                    named.Add(items[phrase.Meaning]);
            }
        }

        return named;
    }
}
