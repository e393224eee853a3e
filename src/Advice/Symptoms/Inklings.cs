using System.Collections.Frozen;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Resemblances;
using Advice.Symptoms.Words;

namespace Advice.Symptoms;

/// <summary>What a sentence says of symptoms that were not read from it: in passing, by other words, or in words of which nothing was understood.</summary>
/// <param name="text">The text.</param>
/// <param name="sentence">The words of the sentence.</param>
/// <param name="read">What was read from it.</param>
/// <param name="candidates">All phrases found in it.</param>
/// <param name="resemblance">What it resembles as a whole.</param>
internal sealed class Inklings(string text, IReadOnlyList<Word> sentence, IReadOnlyList<Statement> read, IReadOnlyList<PhraseMatch> candidates, Resemblance resemblance)
{
    private const int Most = 5;

    /// <summary>What is less probable than that is no more than a word in common.</summary>
    private const double LeastLike = 0.1;

    /// <summary>From this probability on a sentence of which something was read has said it.</summary>
    private const double Sure = 0.75;

    private const int LeastWords = 2;

    /// <summary>More than that is not quoted.</summary>
    private const int MostQuoted = 120;

    private static readonly FrozenSet<string> Well = WordSet.Of("fine ok okay alright perfect perfectly normal normally good great nice nicely lovely sweet straight smooth smoothly quiet silent");

    /// <summary>The inklings, what is said first.</summary>
    public IEnumerable<Inkling> All()
    {
        var noticed = read.Where(statement => statement.Present).SelectMany(statement => statement.Match.Words).ToHashSet();
        var phrases = candidates.Where(one => one.Confidence >= ComplaintReader.LeastConfidence && noticed.Overlaps(one.Words))
            .Select(one => Of(one.Meaning, one.Words, noticed.IsSupersetOf(one.Words)));
        var whole = resemblance.Of(Most + read.Count).Where(guess => guess.Confidence >= LeastLike)
            .Select(guess => Of(guess.Symptom, resemblance.Shared(guess.Symptom), read.Count > 0 ? guess.Confidence >= Sure : IsDenying()));
        return phrases.Concat(whole).OfType<Inkling>().Where(one => one.Symptom.Length > 0 && !read.Any(statement => statement.Match.Meaning == one.Symptom))
            .OrderByDescending(one => one.IsSaid);
    }

    private Inkling? Of(string symptom, IReadOnlyList<Word> words, bool isSaid)
    {
        if (isSaid)
            return new(symptom, "", true);
        // A question about words that deny something would ask whether they were meant.
        if (words.Count < LeastWords || words[^1].End - words[0].Start > MostQuoted || IsDenying())
            return null;
        return new(symptom, Excerpt.Of(text, words[0].Start, words[^1].End), false);
    }

    /// <summary>Whether it says that something is not so, or that all is well.</summary>
    private bool IsDenying() => sentence.Any(word => Negation.Is(word) || Well.Contains(word.Surface));
}
