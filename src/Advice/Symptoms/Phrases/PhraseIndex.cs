using Advice.Symptoms.Words;

namespace Advice.Symptoms.Phrases;

/// <summary>
/// Finds phrases in sentences: all words within a short stretch, mostly in order. Each phrase is looked for only where the rarest word that
/// it needs is said, so that the cost of a text grows little with the number of phrases.
/// </summary>
internal sealed class PhraseIndex
{
    private const double Full = 0.95;
    private const double OneWord = 0.8;
    private const double PerGap = 0.93;
    private const double PerInversion = 0.88;
    private const double PerClause = 0.85;
    private const double PerSlip = 0.9;
    private const double PerSynonym = 0.88;
    private const int FarGap = 8;
    private const double OfClass = 0.9;
    private const int GapsOfStrictClass = 4;

    private readonly FiledPhrases filed;
    private readonly int gaps;
    private readonly bool strict;

    /// <summary>An index of these phrases.</summary>
    /// <param name="filed">The phrases. Where they are strict every word must be there, and in order.</param>
    /// <param name="gaps">How many other words may stand between their words.</param>
    public PhraseIndex(FiledPhrases filed, int gaps) => (this.filed, this.gaps, strict) = (filed, gaps, filed.IsStrict);

    /// <summary>All phrases in the words of a sentence that reach the confidence; they may overlap.</summary>
    /// <param name="sentence">The words that count.</param>
    /// <param name="leastConfidence">What is less sure is left out.</param>
    /// <param name="patient">Whether a part and what is said of it may stand far apart, a word may be a synonym and a phrase of three lack one, as in a text that says nothing else.</param>
    public IEnumerable<PhraseMatch> Find(IReadOnlyList<Word> sentence, double leastConfidence, bool patient = false)
    {
        var possible = Possible(sentence, patient);
        var found = new List<(int Place, string Term)>();
        for (var start = 0; start < sentence.Count && possible.Count > 0; start++)
        {
            foreach (var term in Asked(sentence[start], patient))
            {
                var asked = filed.Bits(term);
                if (asked == default)
                    continue;
                foreach (var (_, phrase, terms, _, _) in possible)
                {
                    if (!terms.MayHold(asked) || !phrase.Terms.Contains(term))
                        continue;
                    found.Clear();
                    if (At(sentence, start, phrase, patient, found) is { } match && match.Confidence >= leastConfidence)
                        yield return match;
                }
            }
        }
    }

    /// <summary>The phrases of which all needed terms may be in a sentence, in the order in which they were given.</summary>
    private List<IndexedPhrase> Possible(IReadOnlyList<Word> sentence, bool patient)
    {
        var terms = sentence.SelectMany(word => Asked(word, patient)).Distinct(StringComparer.Ordinal).ToList();
        var said = filed.Bits(terms);
        var possible = new List<IndexedPhrase>();
        foreach (var phrases in terms.Select(filed.Under).Append(filed.UnderNone))
        {
            foreach (var phrase in phrases)
            {
                if (said.MayHold(patient ? phrase.PatientNeeds : phrase.Needs))
                    possible.Add(phrase);
            }
        }

        possible.Sort((one, other) => one.Number.CompareTo(other.Number));
        return possible;
    }

    /// <param name="sentence">The words that count.</param>
    /// <param name="start">Place of the word that the phrase begins with.</param>
    /// <param name="phrase">The phrase.</param>
    /// <param name="patient">Whether a part and what is said of it may stand far apart.</param>
    /// <param name="found">An empty list, for use here alone.</param>
    private PhraseMatch? At(IReadOnlyList<Word> sentence, int start, Phrase phrase, bool patient, List<(int Place, string Term)> found)
    {
        if (phrase.Exact is not null)
            return sentence[start].Surface == phrase.Exact ? Match(sentence, [(start, phrase.Terms[0])], phrase, phrase.Terms, 0, patient) : null;
        var end = Math.Min(sentence.Count, start + phrase.Terms.Length + Gaps(phrase, patient));
        var asked = phrase.Terms;
        int last = -1, inversions = 0;
        foreach (var term in phrase.Terms)
        {
            var place = Place(sentence, last < 0 ? start : last + 1, AfterNegation(sentence, last, end), term, found, patient);
            if (place < 0 && last >= 0 && !strict && !phrase.IsFixed)
            {
                place = Place(sentence, start, last, term, found, patient);
                inversions += place < 0 ? 0 : 1;
            }

            if (place >= 0)
            {
                found.Add((place, term));
                last = place;
            }
            else if (term is "<failed>" or "<trouble>" && sentence.Count == phrase.Terms.Length - 1)
            {
                // A part alone says nothing, unless it is all that is said: "Wiper motor."
                asked = [.. asked.Where(t => t != term)];
            }
            else if (strict || phrase.IsFixed || phrase.Terms.Length < (patient ? FiledPhrases.LeastTermsForPatientPartial : FiledPhrases.LeastTermsForPartial) || found.Count == 0)
            {
                return null;
            }
        }

        found.Sort();
        return found.Count > 0 && found[0].Place == start ? Match(sentence, found, phrase, asked, inversions, patient) : null;
    }

    /// <summary>What is left out must not be what tells: "clunks when turning" is none of the rest without the clunk.</summary>
    private bool LacksRarest(List<(int Place, string Term)> found, string[] asked) =>
        found.Count < asked.Length && found.Max(f => filed.Weight(f.Term)) <= asked.Except(found.Select(f => f.Term)).Select(term => filed.Weight(term)).DefaultIfEmpty().Max();

    /// <summary>
    /// Whether what a class says is said of the part: no other part stands between them ("the engine light popped up") or follows the part
    /// at once, for then that is the one meant ("ripped the fuel tank door"); and a "leak in the roof" is one of the roof, "leaks onto the seat" none of the seat.
    /// </summary>
    private bool IsSaidOf(IReadOnlyList<Word> sentence, List<(int Place, string Term)> found, bool inverted)
    {
        var last = found.FindLast(f => !WordClasses.IsClass(f.Term)).Place;
        if (last + 1 < sentence.Count && sentence[last + 1].Index == sentence[last].Index + 1 && IsOther(last + 1))
            return false;
        var links = Enumerable.Range(found[0].Place + 1, found[^1].Place - found[0].Place).Select(i => sentence[i].Link).OfType<string>().ToList();
        var adjacent = found[^1].Place - found[0].Place + 1 == found.Count;
        if (inverted && !(links.Count == 0 ? adjacent : links.TrueForAll(l => l is "of" or "in" or "from" or "at" or "on")))
            return false;
        return !Enumerable.Range(found[0].Place, found[^1].Place - found[0].Place).Any(IsOther);

        bool IsOther(int place) => filed.IsPart(sentence[place].Term) && !found.Exists(f => f.Place == place);
    }

    /// <summary>"No" stands right before its word, "not" at most one word away.</summary>
    private static int AfterNegation(IReadOnlyList<Word> sentence, int last, int end) => last < 0 ? end : sentence[last].Term switch
    {
        "no" => Math.Min(end, last + 2),
        "not" => Math.Min(end, last + 3),
        _ => end,
    };

    /// <summary>The terms and classes by which a phrase may ask for a word; with patience also those that it may stand for.</summary>
    private static IEnumerable<string> Asked(Word word, bool patient) => patient ? word.Classes.Concat(word.Synonyms).Prepend(word.Term) : word.Classes.Prepend(word.Term);

    private static int Place(IReadOnlyList<Word> sentence, int from, int to, string term, List<(int Place, string Term)> taken, bool patient)
    {
        for (var i = from; i < to; i++)
        {
            if ((sentence[i].Is(term) || (patient && sentence[i].Synonyms.Contains(term))) && !taken.Exists(f => f.Place == i))
                return i;
        }

        return -1;
    }

    /// <summary>Two words say little, so they must stand closer together than more; "failure" follows its part.</summary>
    private int Gaps(Phrase phrase, bool patient) => patient && phrase.HasClass ? FarGap : strict && phrase.HasClass ? GapsOfStrictClass : Math.Min(gaps, strict ? Math.Max(0, phrase.Terms.Length - 2) : phrase.HasFailure || phrase.HasClass ? phrase.Terms.Length - 1 : phrase.Terms.Length);

    /// <summary>
    /// Whether its words say the same in another order. Of two alone the second must be said of the first, "the pedal is hard": "flat battery" is not "a battery on a flat road".
    /// </summary>
    private bool MayTurn(Phrase phrase, IReadOnlyList<Word> words, int gap) =>
        strict || phrase.HasClass || (gap == 0 && (phrase.Terms.Length > 2 || phrase.HasFailure || WordOrder.IsSaidOfFirst(words[^1])));

    /// <summary>What a word tells; a word that only fits a class tells less than the word itself, where a phrase asks for that.</summary>
    private double Told(string term, Word word) => WordClasses.IsClass(term) || word.Term != term
        ? OfClass * Math.Min(filed.Weight(term), filed.WeightOfAny(word.Term))
        : filed.Weight(term);

    private PhraseMatch? Match(
        IReadOnlyList<Word> sentence, List<(int Place, string Term)> found, Phrase phrase, string[] asked, int inversions, bool patient)
    {
        var places = found.Select(f => f.Place).ToArray();
        var words = places.Select(i => sentence[i]).ToList();
        // A phrase of synonyms alone says something else.
        var likened = found.Count(f => !sentence[f.Place].Is(f.Term));
        if (likened > 0 && (strict || likened == found.Count || phrase.Terms.Length == 1))
            return null;
        var weight = found.Sum(f => filed.Weight(f.Term));
        var coverage = weight / asked.Sum(t => filed.Weight(t));
        var gap = places[^1] - places[0] + 1 - places.Length;
        if (gap > Gaps(phrase, patient) || coverage < FiledPhrases.LeastCoverage || (inversions > 0 && (!MayTurn(phrase, words, gap) || words[0].Clause != words[^1].Clause))
            || WordOrder.Leaps(sentence, places) || WordOrder.IsTornFromNegation(words) || WordOrder.IsTurnedRound(sentence, places, inversions > 0)
            || ((phrase.Terms.Length == 2 || phrase.HasClass) && words[0].Clause != words[^1].Clause)
            || (phrase.HasClass && !strict && !IsSaidOf(sentence, found, inversions > 0)) || LacksRarest(found, asked))
            return null;
        var confidence = (asked.Length == 1 ? OneWord : Full) * coverage
            * Math.Pow(PerGap, patient ? Math.Min(gap, 3) : gap) * Math.Pow(PerInversion, inversions)
            * Math.Pow(PerClause, words[^1].Clause - words[0].Clause) * Math.Pow(PerSlip, words.Count(w => w.Misspelt)) * Math.Pow(PerSynonym, likened);
        var classed = strict ? [] : found.Where(f => WordClasses.IsClass(f.Term)).Select(f => sentence[f.Place]).ToList();
        return new(phrase.Meaning, words, Math.Round(confidence, 2), found.Sum(f => Told(f.Term, sentence[f.Place]))) { Classed = classed, IsPartial = found.Count < asked.Length };
    }
}
