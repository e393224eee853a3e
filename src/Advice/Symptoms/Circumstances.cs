using Advice.Knowledge.Signs;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Words;

namespace Advice.Symptoms;

/// <summary>Finds occasions and positions in what the symptoms of a sentence have left over.</summary>
internal sealed class Circumstances
{
    private const double LeastConfidence = 0.6;
    private readonly PhraseIndex index;
    private readonly Dictionary<string, string?> within;
    private readonly HashSet<string> positions;
    private readonly HashSet<string> events;

    /// <summary>Knows these occasions and positions by their phrases.</summary>
    public Circumstances(IReadOnlyList<Occasion> occasions, IReadOnlyList<Position> positions, FiledPhrases phrases)
    {
        within = occasions.ToDictionary(o => o.Id, o => o.Within, StringComparer.Ordinal);
        this.positions = positions.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        events = occasions.Where(o => o.IsEvent).Select(o => o.Id).ToHashSet(StringComparer.Ordinal);
        index = new(phrases, gaps: 1);
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
}
