using System.Collections.Frozen;
using Advice.Knowledge;

namespace Advice.Symptoms;

/// <summary>Finds work that was done or never done: "new coil last week", "plugs are the originals", "never serviced", "fluid just changed".</summary>
internal sealed class ServiceWords
{
    private static readonly FrozenSet<string> Doing = Set(
        "changed replaced renewed serviced flushed swapped fitted installed rebuilt rotated aligned balanced new done topped changing replacing");

    private static readonly FrozenSet<string> Needing = Set("need needs needed should must recommended quoted wants want due would will");
    private static readonly FrozenSet<string> First = Set("original originals factory");
    private readonly List<(string[] Terms, ServiceItem Item)> named = [];

    /// <summary>Knows the names of these items.</summary>
    public ServiceWords(IEnumerable<ServiceItem> items, Vocabulary vocabulary)
    {
        foreach (var item in items)
        {
            foreach (var phrase in item.Phrases)
                named.Add(([.. vocabulary.ReadPhrase(phrase, w => w.Kind == WordKind.Content).Select(w => w.Term)], item));
        }

        named.Sort((a, b) => b.Terms.Length.CompareTo(a.Terms.Length));
    }

    /// <summary>The mentions, in order, at most one for each clause and item.</summary>
    public IEnumerable<ServiceMention> Find(string text, IReadOnlyList<Word> words, IReadOnlyList<Onset> onsets, IReadOnlyList<SystemMention> systems,
        IReadOnlyList<(int Sentence, int Clause, double Km)> distances)
    {
        foreach (var clause in words.GroupBy(w => w.Clause).Select(g => g.ToList()))
        {
            var first = clause.Exists(w => First.Contains(w.Surface));
            var verb = clause.Find(w => Doing.Contains(w.Surface) || First.Contains(w.Surface));
            if (verb is null || clause.Exists(w => Needing.Contains(w.Surface)))
                continue;
            var done = !first && !clause.Exists(w => w.Term is "not" or "no" && w.Index < verb.Index);
            var (start, end) = (clause[0].Start, clause[^1].End);
            var daysAgo = done ? Ago(clause, onsets) : null;
            var kmAgo = done ? distances.Where(d => d.Sentence == clause[0].Sentence).OrderByDescending(d => d.Clause == clause[0].Clause).Select(d => (double?)d.Km).FirstOrDefault() : null;
            var items = Items(clause);
            var parts = systems.Where(m => start <= m.Start && m.End <= end).ToList();
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

    private List<ServiceItem> Items(List<Word> clause)
    {
        var content = clause.Where(w => w.Kind == WordKind.Content).ToList();
        var (items, used) = (new List<ServiceItem>(), new bool[content.Count]);
        foreach (var (terms, item) in named)
        {
            for (var i = 0; i + terms.Length <= content.Count; i++)
            {
                var places = Enumerable.Range(i, terms.Length).ToList();
                if (!places.TrueForAll(p => content[p].Term == terms[p - i] && !used[p]))
                    continue;
                places.ForEach(p => used[p] = true);
                if (!items.Contains(item))
                    items.Add(item);
            }
        }

        return items;
    }

    private static FrozenSet<string> Set(string words) => words.Split(' ').ToFrozenSet(StringComparer.Ordinal);
}
