using System.Collections.Frozen;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Resemblances;

/// <summary>What one sentence resembles as a whole. It says what else to ask, what is read where no phrase was found, and which phrases were found by chance.</summary>
internal sealed class Resemblance
{
    /// <summary>What is less probable is not worth a question.</summary>
    private const double LeastGuess = 0.03;

    /// <summary>From this probability on the sentence is read so where no phrase was found.</summary>
    private const double Sure = 0.6;

    /// <summary>From this probability on, and from so many times that of what a phrase says, the sentence is read so and not as the phrase says.</summary>
    private const double SureAgainst = 0.7;
    private const double TimesAgainst = 15;

    /// <summary>A phrase of some words that is read so surely is hardly found by chance: it takes more against it.</summary>
    private const double Clear = 0.85;
    private const double TimesAgainstClear = 100;

    /// <summary>From this probability on a sentence beside another complaint tells of a sign, in whatever words.</summary>
    private const double SureBeside = 0.95;

    /// <summary>From this probability on one that tells of something noticed does.</summary>
    private const double LikelyBeside = 0.5;

    private const int LeastShared = 2;

    /// <summary>How sure it is then: little above what is not reported.</summary>
    private const double Confidence = 0.65;

    /// <summary>Words that sentences about anything have.</summary>
    private static readonly FrozenSet<string> Empty = WordSet.Of("""
        no not never but and about something anything then when until since again still always now just only back come comes came coming go goes going gone went away keep keeps kept
        stop stops stopped start starts started fixed week weeks month months day days last long time times
        new part parts get gets got rid year years know knows knew idea sure why what how think thought say says said
        """);

    private readonly SecondOpinion opinion;
    private readonly IReadOnlyList<Word> sentence;
    private readonly Lazy<float[]> learned;
    private readonly Lazy<double[]> probabilities;

    /// <summary>What a sentence resembles.</summary>
    /// <param name="opinion">Who judges.</param>
    /// <param name="sentence">The words of the sentence that count.</param>
    public Resemblance(SecondOpinion opinion, IReadOnlyList<Word> sentence)
    {
        (this.opinion, this.sentence) = (opinion, sentence);
        learned = new(() => opinion.Learned(sentence));
        probabilities = new(() => opinion.Probabilities(sentence, learned.Value));
    }

    /// <summary>The symptoms that it resembles, the most probable first.</summary>
    /// <param name="most">How many to name.</param>
    public IReadOnlyList<Guess> Of(int most) =>
    [
        .. opinion.Meanings.Select((symptom, meaning) => new Guess(symptom, probabilities.Value[meaning])).Where(g => g.Confidence >= LeastGuess)
            .OrderByDescending(g => g.Confidence).ThenBy(g => g.Symptom, StringComparer.Ordinal).Take(most),
    ];

    /// <summary>The words of the sentence that tell of the symptom, in order.</summary>
    public IReadOnlyList<Word> Shared(string symptom) =>
        opinion.Number(symptom) is { } number ? [.. sentence.Where(w => opinion.Knows(number, w) && !Empty.Contains(w.Surface))] : [];

    /// <summary>Whether a word tells nothing of what a sentence is about.</summary>
    public static bool SaysNothing(Word word) => Empty.Contains(word.Surface);

    /// <summary>What the sentence surely says though no phrase says so; null where it is not sure, or where it denies something that is not denied there too.</summary>
    public PhraseMatch? Surest() => Sureness(Sure);

    /// <summary>What the sentence surely says in place of what a phrase says; null where the phrase may be right.</summary>
    public PhraseMatch? Instead(PhraseMatch match) =>
        !IsLearned(match) && Sureness(SureAgainst) is { } clear && match.Words.Any(clear.Words.Contains) && IsToldApart(clear, match)
            && Of(clear) > Times(match) * Of(match) ? clear : null;

    /// <summary>Whether the sentence surely tells of nothing, so that what a phrase says was found by chance. A word of trouble is not said of nothing.</summary>
    public bool IsNothing(PhraseMatch match) =>
        !IsLearned(match) && !match.Words.Any(w => w.Is("<trouble>")) && probabilities.Value[^1] is var nothing && nothing >= SureAgainst && nothing > Times(match) * Of(match);

    /// <summary>
    /// Whether a sentence beside another complaint tells of a sign of its own: most such sentences tell how it came. So it must speak of something noticed, and
    /// the sign be likely, or it must surely be that sign.
    /// </summary>
    public bool IsNews(PhraseMatch match, bool isNoticing) => Of(match) is var own && (own >= SureBeside || (isNoticing && own >= LikelyBeside));

    /// <summary>Whether what was learned says the same: most phrases need nothing more.</summary>
    private bool IsLearned(PhraseMatch match) => opinion.Number(match.Meaning) is { } number && Array.IndexOf(learned.Value, learned.Value.Max()) == number;

    /// <summary>Whether words of the one that are none of the other tell them apart, and are not denied: "the vibration came back" tells of no part that vibrates.</summary>
    private bool IsToldApart(PhraseMatch clear, PhraseMatch match)
    {
        var own = clear.Words.Where(w => !match.Words.Contains(w) && !Empty.Contains(w.Surface) && !Knows(match, w)).ToList();
        return own.Count > 0 && !own.Exists(w => sentence.Any(before => Negation.Is(before) && before.Index < w.Index && w.Index - before.Index <= 2));
    }

    private static double Times(PhraseMatch match) => match.Words.Count > 1 && match.Confidence >= Clear ? TimesAgainstClear : TimesAgainst;

    private bool Knows(PhraseMatch match, Word word) => opinion.Number(match.Meaning) is { } number && opinion.Knows(number, word);

    private double Of(PhraseMatch match) => opinion.Number(match.Meaning) is { } number ? probabilities.Value[number] : 0;

    private PhraseMatch? Sureness(double least)
    {
        var surest = Of(1);
        if (surest.Count == 0 || surest[0].Confidence < least)
            return null;
        var number = opinion.Number(surest[0].Symptom)!.Value;
        var shared = sentence.Where(w => opinion.Knows(number, w)).ToList();
        var denied = sentence.Any(w => Negation.Is(w) && !shared.Contains(w));
        return denied || shared.Count(w => !Empty.Contains(w.Surface)) < LeastShared ? null : new(surest[0].Symptom, shared, Confidence, shared.Count) { IsLearned = true };
    }
}
