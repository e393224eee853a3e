using Advice.Knowledge.Signs;

namespace Advice.Symptoms;

/// <summary>Finds occasions and positions in what the symptoms of a sentence have left over.</summary>
internal sealed class Circumstances
{
    private const double LeastConfidence = 0.6;
    private readonly PhraseIndex index;
    private readonly Dictionary<string, string?> within;
    private readonly HashSet<string> positions;
    private readonly HashSet<string> events;

    /// <summary>Knows these occasions and positions.</summary>
    public Circumstances(IReadOnlyList<Occasion> occasions, IReadOnlyList<Position> positions, Vocabulary vocabulary)
    {
        within = occasions.ToDictionary(o => o.Id, o => o.Within, StringComparer.Ordinal);
        this.positions = positions.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        events = occasions.Where(o => o.IsEvent).Select(o => o.Id).ToHashSet(StringComparer.Ordinal);
        var stated = occasions.SelectMany(o => o.Phrases.Select(p => (o.Id, Text: p)))
            .Concat(positions.SelectMany(p => p.Phrases.Select(t => (p.Id, Text: t))));
        var idioms = Usage.List(Usage.Idioms).Select(i => (Id: "", Text: i));
        index = new(stated.Concat(idioms).Select(p => Parse(p.Id, p.Text, vocabulary)).Where(p => p.Terms.Length > 0), gaps: 1, strict: true);
    }

    /// <summary>All that could be occasions and positions in a sentence; they may overlap.</summary>
    public List<PhraseMatch> Find(IEnumerable<Word> sentence) =>
        [.. index.Find([.. sentence.Where(w => w.Kind != WordKind.Filler)], LeastConfidence)];

    /// <summary>Whether it is a position; otherwise it is an occasion.</summary>
    public bool IsPosition(PhraseMatch match) => positions.Contains(match.Meaning);

    /// <summary>Whether it happened once: what is denied since then is denied altogether.</summary>
    public bool IsEvent(PhraseMatch match) => events.Contains(match.Meaning);

    /// <summary>The occasions without those that a narrower one of them is part of, in order of their ids.</summary>
    public IReadOnlyList<string> Narrowest(IEnumerable<string> occasions)
    {
        var all = occasions.Distinct().Order(StringComparer.Ordinal).ToList();
        return all.Where(o => !all.Any(n => within.GetValueOrDefault(n) == o)).ToList();
    }

    /// <summary>One word alone counts in that form only: "parking" is an occasion, "parked" another.</summary>
    private static Phrase Parse(string id, string text, Vocabulary vocabulary)
    {
        var words = vocabulary.ReadPhrase(text, w => w.Kind != WordKind.Filler);
        return new(id, [.. words.Select(w => w.Term)], words.Count == 1 ? words[0].Surface : null);
    }
}
