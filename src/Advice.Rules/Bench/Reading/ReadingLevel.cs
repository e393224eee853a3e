namespace Advice.Rules.Bench.Reading;

/// <summary>
/// The Flesch–Kincaid grade of English: 0.39 words a sentence + 11.8 syllables a word − 15.59, the school year in which it is understood
/// (Kincaid, Fishburne, Rogers and Chissom, Research Branch Report 8-75, Naval Technical Training Command, 1975).
/// </summary>
public sealed record ReadingLevel(int Sentences, int Words, int Syllables)
{
    private static readonly char[] Ends = ['.', '!', '?'];

    /// <summary>The grade; 0 where there are no words.</summary>
    public double Grade => Words == 0 ? 0 : (0.39 * Words / Sentences) + (11.8 * Syllables / Words) - 15.59;

    /// <summary>The level of texts taken together, each at least one sentence.</summary>
    public static ReadingLevel Of(IEnumerable<string> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        var (sentences, words, syllables) = (0, 0, 0);
        foreach (var text in texts)
        {
            foreach (var sentence in text.Split(Ends, StringSplitOptions.RemoveEmptyEntries).Select(WordsOf).Where(one => one.Count > 0))
            {
                sentences++;
                words += sentence.Count;
                syllables += sentence.Sum(English.SyllablesOf);
            }
        }

        return new ReadingLevel(sentences, words, syllables);
    }

    private static List<string> WordsOf(string sentence) =>
        [.. sentence.Split([' ', ',', '/', '-', '(', ')', '"', '…'], StringSplitOptions.RemoveEmptyEntries).Where(word => word.Any(char.IsAsciiLetter))];
}
