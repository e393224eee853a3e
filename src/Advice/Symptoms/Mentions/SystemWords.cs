using Advice.Knowledge;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Mentions;

/// <summary>Finds the words that name systems; where several entries fit, the longest counts for every system that lists it.</summary>
internal sealed class SystemWords
{
    private const double Named = 1;
    private const double Hinted = 0.35;
    private readonly Dictionary<string, List<(string[] Terms, string? Link, string? System, double Weight)>> byFirst = new(StringComparer.Ordinal);

    /// <summary>Knows the words of these systems.</summary>
    public SystemWords(IEnumerable<VehicleSystem> systems, Vocabulary vocabulary)
    {
        foreach (var system in systems)
        {
            foreach (var word in system.Words)
                Add(word, system.Id, Named, vocabulary);
            foreach (var word in system.Hints)
                Add(word, system.Id, Hinted, vocabulary);
        }

        foreach (var idiom in Usage.List(Usage.Handling, Usage.Sayings))
            Add(idiom, null, 0, vocabulary);
        foreach (var list in byFirst.Values)
            list.Sort((a, b) => b.Terms.Length.CompareTo(a.Terms.Length));
    }

    /// <summary>The mentions in the words of a text, in order.</summary>
    public IEnumerable<SystemMention> Find(string text, IReadOnlyList<Word> words)
    {
        var content = words.Where(w => w.Kind == WordKind.Content).ToList();
        for (var i = 0; i < content.Count; i++)
        {
            var found = byFirst.GetValueOrDefault(content[i].Term, []).Where(e => (e.Link is null || e.Link == content[i].Link) && IsAt(content, i, e.Terms)).ToList();
            if (found.Count == 0)
                continue;
            var length = found[0].Terms.Length;
            var (start, end) = (content[i].Start, content[i + length - 1].End);
            var denied = i > 0 && content[i - 1].Clause == content[i].Clause && Negation.Is(content[i - 1]);
            foreach (var (_, _, system, weight) in found.Where(e => e.Terms.Length == length && e.System is not null && !denied))
                yield return new(system!, Excerpt.Of(text, start, end), start, end, weight);
            i += length - 1;
        }
    }

    private static bool IsAt(List<Word> content, int start, string[] terms)
    {
        if (start + terms.Length > content.Count)
            return false;
        for (var i = 0; i < terms.Length; i++)
        {
            if (content[start + i].Term != terms[i] || content[start + i].Sentence != content[start].Sentence)
                return false;
        }

        return true;
    }

    private void Add(string entry, string? system, double weight, Vocabulary vocabulary)
    {
        var words = vocabulary.ReadPhrase(entry, w => w.Kind == WordKind.Content);
        if (words.Count == 0)
            return;
        // One word alone needs the preposition that it is listed with: "into drive" is a gear, "drive" is not.
        var (terms, link) = (words.Select(w => w.Term).ToArray(), words.Count == 1 ? words[0].Link : null);
        if (!byFirst.TryGetValue(terms[0], out var list))
            byFirst[terms[0]] = list = [];
        if (!list.Exists(e => e.System == system && e.Link == link && e.Terms.SequenceEqual(terms)))
            list.Add((terms, link, system, weight));
    }
}
