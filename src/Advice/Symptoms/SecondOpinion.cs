using Advice.Knowledge;

namespace Advice.Symptoms;

/// <summary>
/// What a sentence resembles as a whole, phrase or no phrase: how much it has in common with the nearest phrase of a symptom and with all of its
/// phrases together, each word weighed by its rarity. It says what else to ask, and only of a text that says nothing by phrases what it reports.
/// </summary>
internal sealed class SecondOpinion
{
    /// <summary>Weight of the class of a word beside the word itself: a rattle is a little like every noise.</summary>
    private const double OfClass = 0.5;

    /// <summary>Weight of what a word may stand for.</summary>
    private const double OfSynonym = 0.4;

    /// <summary>Weight of two words that follow each other.</summary>
    private const double OfPair = 0.7;

    /// <summary>How much the nearest phrase counts; the rest is how much all phrases together do.</summary>
    private const double OfNearest = 0.5;

    /// <summary>What is less near has nothing in common but small words.</summary>
    private const double LeastNearness = 0.1;

    /// <summary>What is so near, and by that factor nearer than anything else, is what the sentence says.</summary>
    private const double NearEnough = 0.4;
    private const double Nearer = 1.2;
    private const int LeastShared = 2;

    /// <summary>How sure it is then: little above what is not reported.</summary>
    private const double Confidence = 0.65;

    private readonly string[] meanings;
    private readonly TermVectors phrases;
    private readonly TermVectors symptoms;
    private readonly IReadOnlyDictionary<string, double>[] words;

    /// <summary>An opinion by the phrases, names and questions of these symptoms.</summary>
    /// <param name="known">The symptoms.</param>
    /// <param name="vocabulary">Reads their phrases.</param>
    public SecondOpinion(IReadOnlyList<Symptom> known, Vocabulary vocabulary)
    {
        meanings = [.. known.Select(s => s.Id)];
        var said = known.Select(s => s.Phrases.Append(s.Name.Plain).Append(s.Name.Trade).Append(s.Ask).Distinct()
            .Select(p => Terms(vocabulary.ReadPhrase(p, w => w.Kind == WordKind.Content))).ToList()).ToList();
        phrases = new([.. said.SelectMany((own, meaning) => own.Select(terms => (meaning, (IReadOnlyDictionary<string, double>)terms)))]);
        words = [.. said.Select(Together)];
        symptoms = new([.. words.Select((own, meaning) => (meaning, own))]);
    }

    /// <summary>The symptoms that it resembles, the nearest first.</summary>
    /// <param name="sentence">Its words that count.</param>
    /// <param name="most">How many to name.</param>
    public IReadOnlyList<Guess> Of(IReadOnlyList<Word> sentence, int most)
    {
        var scores = new double[meanings.Length];
        var terms = Terms(sentence);
        phrases.AddTo(scores, terms, OfNearest);
        symptoms.AddTo(scores, terms, 1 - OfNearest);
        return [.. Enumerable.Range(0, scores.Length).Where(i => scores[i] >= LeastNearness)
            .Select(i => new Guess(meanings[i], Math.Round(scores[i], 4)))
            .OrderByDescending(g => g.Confidence).ThenBy(g => g.Symptom, StringComparer.Ordinal).Take(most)];
    }

    /// <summary>What the sentence says, if it resembles one symptom clearly more than any other and denies nothing that is not denied there too; else null.</summary>
    /// <param name="sentence">Its words that count.</param>
    public PhraseMatch? Clear(IReadOnlyList<Word> sentence)
    {
        var near = Of(sentence, 2);
        if (near.Count == 0 || near[0].Confidence < NearEnough || (near.Count > 1 && near[0].Confidence < Nearer * near[1].Confidence))
            return null;
        var own = words[Array.IndexOf(meanings, near[0].Symptom)];
        var shared = sentence.Where(w => own.ContainsKey(w.Term)).ToList();
        var denied = sentence.Any(w => w.Term is "not" or "no" && !shared.Contains(w));
        return denied || shared.Count < LeastShared ? null : new(near[0].Symptom, shared, Confidence, shared.Count);
    }

    private static Dictionary<string, double> Terms(IReadOnlyList<Word> words)
    {
        var terms = new Dictionary<string, double>(StringComparer.Ordinal);
        for (var i = 0; i < words.Count; i++)
        {
            terms[words[i].Term] = 1;
            foreach (var one in words[i].Classes)
                terms.TryAdd(one, OfClass);
            foreach (var one in words[i].Synonyms)
                terms.TryAdd(one, OfSynonym);
            if (i > 0)
                terms[$"{words[i - 1].Term} {words[i].Term}"] = OfPair;
        }

        return terms;
    }

    private static Dictionary<string, double> Together(List<Dictionary<string, double>> phrases) => phrases.SelectMany(p => p)
        .GroupBy(t => t.Key, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Max(t => t.Value), StringComparer.Ordinal);
}
