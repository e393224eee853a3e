using Advice.Symptoms.Words;

namespace Advice.Symptoms.Phrases;

/// <summary>What of the words of phrases counts when a text is read for them.</summary>
public sealed class PhraseWords
{
    private readonly Vocabulary vocabulary;

    /// <summary>The words of these phrases.</summary>
    public PhraseWords(IEnumerable<string> phrases) => vocabulary = new(Vocabulary.WordsOf(phrases));

    /// <summary>What counts of a phrase, and what does not.</summary>
    public CountedWords Of(string phrase)
    {
        var all = vocabulary.ReadPhrase(phrase, _ => true);
        var counted = all.FindAll(word => word.Kind == WordKind.Content);
        return new(
            [.. counted.Select(word => word.Term)], string.Join(' ', counted.Select(word => word.Surface)),
            [.. all.Where(word => word.Kind != WordKind.Content).Select(word => word.Surface)]);
    }
}
