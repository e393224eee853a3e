using System.Text;

namespace Advice.Symptoms.Words;

/// <summary>Splits a text into words, clauses and sentences.</summary>
internal static class WordSplitter
{
    /// <summary>A run of words without a stop is cut at the next clause after so many words: dictated text has no stops.</summary>
    private const int LongSentence = 25;

    /// <summary>Where there is no clause either, it is cut after so many.</summary>
    private const int LongestSentence = 60;

    private enum Break
    {
        None,
        Clause,
        Sentence,
    }

    /// <summary>The words of a text, in order.</summary>
    public static List<RawWord> Split(string text)
    {
        var words = new List<(string Text, int Start, int End, Break Before)>();
        var letters = new StringBuilder();
        var before = Break.Sentence;
        var start = 0;
        for (var i = 0; i <= text.Length; i++)
        {
            if (i < text.Length && char.IsLetterOrDigit(text[i]))
            {
                if (letters.Length == 0)
                    start = i;
                letters.Append(char.ToLowerInvariant(text[i]));
                continue;
            }

            if (letters.Length > 0 && Joins(text, i))
                continue;
            if (letters.Length > 0)
            {
                words.Add((letters.ToString(), start, i, before));
                letters.Clear();
                before = Break.None;
            }

            if (i < text.Length && BreakAt(text, i) is var found && found > before)
                before = found;
        }

        return Number(words);
    }

    /// <summary>Whether the character at that place stands inside a word: an apostrophe, or the stroke of a/c and w/o.</summary>
    private static bool Joins(string text, int i)
    {
        if (i + 1 >= text.Length || i == 0 || !char.IsLetter(text[i - 1]) || !char.IsLetter(text[i + 1]))
            return false;
        return text[i] switch
        {
            '\'' or '’' or '‘' or 'ʼ' or '`' or '´' => true,
            '/' => (i < 2 || !char.IsLetterOrDigit(text[i - 2])) && (i + 2 == text.Length || !char.IsLetterOrDigit(text[i + 2])),
            _ => false,
        };
    }

    private static Break BreakAt(string text, int i) => text[i] switch
    {
        '.' => i > 0 && i + 1 < text.Length && char.IsDigit(text[i - 1]) && char.IsDigit(text[i + 1]) ? Break.None : Break.Sentence,
        '!' or '?' or ';' or '。' or '！' or '？' or '•' => Break.Sentence,
        ',' => i > 0 && i + 1 < text.Length && char.IsDigit(text[i - 1]) && char.IsDigit(text[i + 1]) ? Break.None : Break.Clause,
        ':' or '(' or ')' or '[' or ']' or '–' or '—' or '"' or '“' or '”' or '，' => Break.Clause,
        '\n' => i > 0 && text[i - 1] == '\n' ? Break.Sentence : Break.Clause,
        '-' => i > 0 && char.IsWhiteSpace(text[i - 1]) ? Break.Clause : Break.None,
        _ => Break.None,
    };

    private static List<RawWord> Number(List<(string Text, int Start, int End, Break Before)> words)
    {
        var numbered = new List<RawWord>(words.Count);
        int sentence = -1, clause = -1, length = 0;
        for (var i = 0; i < words.Count; i++)
        {
            var (text, start, end, found) = words[i];
            if (found == Break.None && Conjunctions.OpensClause(text, i + 1 < words.Count ? words[i + 1].Text : ""))
                found = Break.Clause;
            if ((found == Break.Clause && length >= LongSentence) || length >= LongestSentence)
                found = Break.Sentence;
            if (found == Break.Sentence)
            {
                sentence++;
                length = 0;
            }

            if (found != Break.None)
                clause++;
            length++;
            numbered.Add(new(text, start, end, sentence, clause));
        }

        return numbered;
    }
}
