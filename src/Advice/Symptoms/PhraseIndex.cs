using System.Collections.Frozen;

namespace Advice.Symptoms;

/// <summary>
/// Finds phrases in sentences: all words within a short stretch, mostly in order. Words weigh by their rarity among meanings
/// (inverse document frequency). The cost is proportional to the length of the text: each word opens one window of fixed size.
/// </summary>
internal sealed class PhraseIndex
{
    private const double Full = 0.95;
    private const double OneWord = 0.8;
    private const double PerGap = 0.93;
    private const double PerInversion = 0.88;
    private const double PerClause = 0.85;
    private const double PerSlip = 0.9;
    private const double LeastCoverage = 0.75;
    private const int LeastTermsForPartial = 4;
    private readonly FrozenDictionary<string, Phrase[]> byTerm;
    private readonly FrozenDictionary<string, double> weights;
    private readonly int gaps;
    private readonly bool strict;

    /// <summary>An index of these phrases.</summary>
    /// <param name="phrases">The phrases.</param>
    /// <param name="gaps">How many other words may stand between their words.</param>
    /// <param name="strict">Whether every word must be there, and in order.</param>
    public PhraseIndex(IEnumerable<Phrase> phrases, int gaps, bool strict)
    {
        this.gaps = gaps;
        this.strict = strict;
        var all = phrases.DistinctBy(p => (p.Meaning, string.Join(' ', p.Terms), p.Exact)).ToList();
        byTerm = all.SelectMany(p => p.Terms.Distinct().Select(t => (Term: t, Phrase: p)))
            .GroupBy(p => p.Term, p => p.Phrase, StringComparer.Ordinal)
            .ToFrozenDictionary(g => g.Key, g => g.ToArray(), StringComparer.Ordinal);
        var meanings = all.Select(p => p.Meaning).Distinct().Count();
        weights = byTerm.ToFrozenDictionary(
            p => p.Key, p => 1 + Math.Log((double)meanings / p.Value.Select(q => q.Meaning).Distinct().Count()), StringComparer.Ordinal);
    }

    /// <summary>All phrases in the words of a sentence that reach the confidence; they may overlap.</summary>
    public IEnumerable<PhraseMatch> Find(IReadOnlyList<Word> sentence, double leastConfidence)
    {
        for (var start = 0; start < sentence.Count; start++)
        {
            foreach (var phrase in sentence[start].Classes.Prepend(sentence[start].Term).SelectMany(t => byTerm.GetValueOrDefault(t, [])))
            {
                if (At(sentence, start, phrase) is { } match && match.Confidence >= leastConfidence)
                    yield return match;
            }
        }
    }

    private PhraseMatch? At(IReadOnlyList<Word> sentence, int start, Phrase phrase)
    {
        if (phrase.Exact is not null)
            return sentence[start].Surface == phrase.Exact ? Match(sentence, [start], phrase, 0) : null;
        var end = Math.Min(sentence.Count, start + phrase.Terms.Length + Gaps(phrase));
        var found = new List<int>(phrase.Terms.Length);
        int last = -1, inversions = 0;
        foreach (var term in phrase.Terms)
        {
            var place = Place(sentence, last < 0 ? start : last + 1, AfterNegation(sentence, last, end), term, found);
            if (place < 0 && last >= 0 && !strict && !phrase.IsFixed)
            {
                place = Place(sentence, start, last, term, found);
                inversions += place < 0 ? 0 : 1;
            }

            if (place >= 0)
            {
                found.Add(place);
                last = place;
            }
            else if (WordClasses.IsClass(term) && sentence.Count == phrase.Terms.Length - 1)
            {
                // A part alone says nothing, unless it is all that is said: "Wiper motor."
                continue;
            }
            else if (strict || phrase.IsFixed || phrase.Terms.Length < LeastTermsForPartial || found.Count == 0)
            {
                return null;
            }
        }

        found.Sort();
        return found[0] == start ? Match(sentence, found, phrase, inversions) : null;
    }

    /// <summary>"Squeals when I brake" does not say that the brakes squeal, nor "vibration and no noise" that there is a vibrating noise.</summary>
    private static bool Leaps(IReadOnlyList<Word> sentence, List<int> places)
    {
        for (var i = places[0]; i < places[^1]; i++)
        {
            if (sentence[i].Term is "when" or "after" or "before" or "until" or "no" && !places.Contains(i))
                return true;
        }

        return false;
    }

    /// <summary>"No" stands right before its word, "not" at most one word away.</summary>
    private static int AfterNegation(IReadOnlyList<Word> sentence, int last, int end) => last < 0 ? end : sentence[last].Term switch
    {
        "no" => Math.Min(end, last + 2),
        "not" => Math.Min(end, last + 3),
        _ => end,
    };

    private static int Place(IReadOnlyList<Word> sentence, int from, int to, string term, List<int> taken)
    {
        for (var i = from; i < to; i++)
        {
            if (sentence[i].Is(term) && !taken.Contains(i))
                return i;
        }

        return -1;
    }

    /// <summary>Two words say little, so they must stand closer together than more; "failure" follows its part.</summary>
    private int Gaps(Phrase phrase) =>
        Math.Min(gaps, strict ? Math.Max(0, phrase.Terms.Length - 2) : phrase.Terms.Contains("fail") || phrase.HasClass ? phrase.Terms.Length - 1 : phrase.Terms.Length);

    private PhraseMatch? Match(IReadOnlyList<Word> sentence, List<int> places, Phrase phrase, int inversions)
    {
        var words = places.ConvertAll(i => sentence[i]);
        var terms = phrase.HasClass && words.Count < phrase.Terms.Length ? phrase.Terms.Where(t => !WordClasses.IsClass(t)).ToArray() : phrase.Terms;
        var classed = terms.Where(WordClasses.IsClass).SelectMany(c => words.Where(w => w.Is(c))).ToList();
        var weight = words.Sum(w => terms.Where(w.Is).Max(t => weights[t]));
        var coverage = weight / terms.Sum(t => weights[t]);
        var gap = places[^1] - places[0] + 1 - places.Count;
        if (gap > Gaps(phrase) || coverage < LeastCoverage || (inversions > 0 && gap > 0) || Leaps(sentence, places)
            || (phrase.Terms.Length == 2 && words[0].Clause != words[^1].Clause))
            return null;
        var confidence = (terms.Length == 1 ? OneWord : Full) * coverage
            * Math.Pow(PerGap, gap) * Math.Pow(PerInversion, inversions)
            * Math.Pow(PerClause, words[^1].Clause - words[0].Clause) * Math.Pow(PerSlip, words.Count(w => w.Misspelt));
        return new(phrase.Meaning, words, Math.Round(confidence, 2), weight) { Classed = classed };
    }
}
