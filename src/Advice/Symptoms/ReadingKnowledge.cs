using Advice.Symptoms.Mentions;
using Advice.Symptoms.Phrases;
using Advice.Symptoms.Resemblances;

namespace Advice.Symptoms;

/// <summary>What a reader knows, whatever the text.</summary>
/// <param name="Symptoms">The phrases of symptoms.</param>
/// <param name="Circumstances">The phrases of occasions and positions.</param>
/// <param name="Systems">The words that name systems.</param>
/// <param name="Opinion">What a sentence resembles as a whole.</param>
/// <param name="Grave">Symptoms that may forbid driving.</param>
/// <param name="Bearers">Which systems can bear a symptom.</param>
internal sealed record ReadingKnowledge(
    PhraseIndex Symptoms, Circumstances Circumstances, SystemWords Systems, Lazy<SecondOpinion> Opinion, IReadOnlySet<string> Grave, Bearers Bearers);
