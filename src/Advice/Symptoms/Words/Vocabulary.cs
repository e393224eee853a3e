using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace Advice.Symptoms.Words;

/// <summary>The words of the phrases and of <see cref="Usage"/>: gives each word of a text its term and its weight class.</summary>
internal sealed partial class Vocabulary
{
    private readonly FrozenDictionary<string, WordKind> light;
    private readonly FrozenDictionary<string, string> terms;
    private readonly WordGroups groups;
    private readonly WordClasses classes;
    private readonly Synonyms synonyms;
    private readonly Spelling spelling;

    /// <summary>A vocabulary that knows these words.</summary>
    public Vocabulary(IEnumerable<string> words)
    {
        var kinds = new Dictionary<string, WordKind>(StringComparer.Ordinal);
        foreach (var word in Split(Usage.Links))
            kinds[word] = WordKind.Link;
        foreach (var word in Split(Usage.Fillers))
            kinds[word] = WordKind.Filler;
        light = kinds.ToFrozenDictionary(StringComparer.Ordinal);
        (terms, groups) = Meanings();
        classes = new(w => Term(w));
        synonyms = new(w => Term(w));
        spelling = new(words.Concat(terms.Keys).Where(w => !light.ContainsKey(w)));
    }

    /// <summary>The words of phrases, each once.</summary>
    public static IReadOnlyList<string> WordsOf(IEnumerable<string> phrases) =>
        [.. phrases.SelectMany(WordSplitter.Split).Select(word => word.Text).Distinct(StringComparer.Ordinal)];

    /// <summary>Whether phrases have the word.</summary>
    public bool Knows(string word) => spelling.Knows(word);

    /// <summary>The words with their terms, groups of words with one meaning joined.</summary>
    public List<Word> Read(IEnumerable<RawWord> text)
    {
        var words = Compounds.Join(text).Select(Of).ToList();
        NeitherNor.Resolve(words);
        // A meaning may be part of another: "no longer" is "not", and "not work" is "fail".
        words = groups.Join(groups.Join(words));
        string? link = null;
        var predicate = false;
        for (var i = 0; i < words.Count; i++)
        {
            words[i] = words[i] with { Index = i, Classes = classes.Of(words[i].Term), Synonyms = synonyms.Of(words[i].Term), Link = link, IsPredicate = predicate };
            link = words[i].Kind == WordKind.Link ? words[i].Surface : words[i].Kind == WordKind.Content ? null : link;
            predicate = words[i].Kind != WordKind.Content && (predicate || words[i].Surface is "is" or "are" or "was" or "were" or "being");
        }

        return words;
    }

    /// <summary>The terms of a phrase and of the classes in it.</summary>
    /// <param name="phrase">Words, and classes in angle brackets.</param>
    /// <param name="keep">Which words count.</param>
    public List<Word> ReadPhrase(string phrase, Func<Word, bool> keep)
    {
        if (!phrase.Contains('<', StringComparison.Ordinal))
            return Read(WordSplitter.Split(phrase)).Where(keep).ToList();
        var words = new List<Word>();
        foreach (var piece in ClassOrWords().Matches(phrase).Select(m => m.Value))
        {
            if (WordClasses.IsClass(piece))
                words.Add(new(piece, piece, WordKind.Content, 0, 0, 0, 0));
            else
                words.AddRange(Read(WordSplitter.Split(piece)).Where(keep));
        }

        return words;
    }

    [GeneratedRegex("<[a-z]+>|[^<]+")]
    private static partial Regex ClassOrWords();

    private Word Of(RawWord raw)
    {
        if (NegativeContractions.Contains(raw.Text))
            return new("not", "not", WordKind.Content, raw.Start, raw.End, raw.Sentence, raw.Clause);
        if (light.TryGetValue(raw.Text, out var kind))
            return new(raw.Text, Person(raw.Text), kind, raw.Start, raw.End, raw.Sentence, raw.Clause);
        var known = spelling.Correct(raw.Text);
        var term = Term(known ?? raw.Text);
        return new(known ?? raw.Text, term, WordKind.Content, raw.Start, raw.End, raw.Sentence, raw.Clause, known is not null);
    }

    private string Term(string word) => Term(word, terms);

    private static string Term(string word, IReadOnlyDictionary<string, string> terms)
    {
        if (terms.TryGetValue(word, out var meant))
            return meant;
        var stem = WordForms.Stem(word);
        return terms.GetValueOrDefault(stem, stem);
    }

    private static string Person(string word) => word is "we" or "you" or "he" or "she" or "they" ? "i" : word;

    private static readonly FrozenSet<string> NegativeContractions =
        Split(Usage.NegativeContractions).ToFrozenSet(StringComparer.Ordinal);

    private static (FrozenDictionary<string, string> Terms, WordGroups Groups) Meanings()
    {
        var single = new Dictionary<string, string>(StringComparer.Ordinal);
        var several = new List<(string Group, string Term)>();
        foreach (var line in Usage.Meanings.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            var term = line[..colon].Trim();
            var target = term.Contains(' ', StringComparison.Ordinal) ? term : WordForms.Stem(term);
            foreach (var form in line[(colon + 1)..].Split(',', StringSplitOptions.TrimEntries))
            {
                if (form.Contains(' ', StringComparison.Ordinal))
                {
                    several.Add((form, target));
                }
                else
                {
                    single[form] = target;
                    // An inflected form is listed for itself: "loosing" means "losing", yet "loose" does not mean "lose".
                    if (!form.EndsWith("ing", StringComparison.Ordinal) && !form.EndsWith("ed", StringComparison.Ordinal))
                        single[WordForms.Stem(form)] = target;
                }
            }
        }

        // A target may itself be given another meaning, and the words of a group have meanings of their own.
        var terms = single.ToDictionary(p => p.Key, p => single.GetValueOrDefault(p.Value, p.Value), StringComparer.Ordinal);
        var links = Split(Usage.Links).Concat(Split(Usage.Fillers)).ToHashSet(StringComparer.Ordinal);
        var groups = several.Select(g => (Split(g.Group).Select(w => links.Contains(w) ? Person(w) : Term(w, terms)).ToArray(),
            terms.GetValueOrDefault(g.Term, g.Term)));
        return (terms.ToFrozenDictionary(StringComparer.Ordinal), new(groups));
    }

    private static string[] Split(string words) =>
        words.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
