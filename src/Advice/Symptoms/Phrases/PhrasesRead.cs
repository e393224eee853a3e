using Advice.Knowledge.Limits;
using Advice.Knowledge.Signs;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Phrases;

/// <summary>The phrases of a rule set as a reader looks for them.</summary>
/// <param name="Words">All words of all phrases, each once.</param>
/// <param name="Symptoms">The phrases of symptoms, and those that say nothing.</param>
/// <param name="Circumstances">Those of occasions and positions, and those that say nothing.</param>
/// <param name="Services">Those of service items, the longest first.</param>
internal sealed record PhrasesRead(IReadOnlyList<string> Words, FiledPhrases Symptoms, FiledPhrases Circumstances, IReadOnlyList<Phrase> Services)
{
    /// <summary>What a vocabulary of these words makes of the phrases of symptoms, circumstances and service items.</summary>
    public static PhrasesRead Of(
        IReadOnlyList<string> words, Vocabulary vocabulary, IEnumerable<Symptom> symptoms, IEnumerable<Occasion> occasions, IEnumerable<Position> positions, IEnumerable<ServiceItem> services)
    {
        var work = services.SelectMany(s => s.Phrases, (s, text) => Parse(s.Id, text)).ToList();
        work.Sort((a, b) => b.Terms.Length.CompareTo(a.Terms.Length));
        return new(
            words,
            Filed(symptoms.SelectMany(s => s.Phrases, (s, text) => Parse(s.Id, text)).Concat(Idioms(Parse, Usage.Harmless, Usage.Sayings)), strict: false),
            Filed(
                occasions.SelectMany(o => o.Phrases, (o, text) => Whole(o.Id, text)).Concat(positions.SelectMany(p => p.Phrases, (p, text) => Whole(p.Id, text)))
                    .Concat(Idioms(Whole, Usage.Idioms, Usage.Sayings)),
                strict: true),
            work);

        Phrase Parse(string id, string text) => new(id, [.. vocabulary.ReadPhrase(text, w => w.Kind == WordKind.Content).Select(w => w.Term)], null);

        // One word alone counts in that form only: "parking" is an occasion, "parked" another.
        Phrase Whole(string id, string text)
        {
            var words = vocabulary.ReadPhrase(text, w => w.Kind != WordKind.Filler);
            return new(id, [.. words.Select(w => w.Term)], words.Count == 1 ? words[0].Surface : null);
        }

        static IEnumerable<Phrase> Idioms(Func<string, string, Phrase> parse, params string[] lists) => Usage.List(lists).Select(text => parse("", text));

        static FiledPhrases Filed(IEnumerable<Phrase> phrases, bool strict) => new(phrases.Where(p => p.Terms.Length > 0), strict);
    }

    /// <summary>What <see cref="Write(BinaryWriter)"/> wrote.</summary>
    public static PhrasesRead Read(BinaryReader bytes)
    {
        var (words, symptoms, circumstances, texts) = (Texts(bytes), new FiledPhrases(bytes), new FiledPhrases(bytes), Texts(bytes));
        var services = new Phrase[bytes.Read7BitEncodedInt()];
        for (var i = 0; i < services.Length; i++)
        {
            var (item, terms) = (texts[bytes.Read7BitEncodedInt()], new string[bytes.Read7BitEncodedInt()]);
            for (var j = 0; j < terms.Length; j++)
                terms[j] = texts[bytes.Read7BitEncodedInt()];
            services[i] = new(item, terms, null);
        }

        return new(words, symptoms, circumstances, services);
    }

    /// <summary>Writes them; texts that stand there often are named by their numbers.</summary>
    public void Write(BinaryWriter bytes)
    {
        Write(bytes, Words);
        Symptoms.Write(bytes);
        Circumstances.Write(bytes);
        string[] texts = [.. Services.SelectMany(phrase => phrase.Terms.Prepend(phrase.Meaning)).Distinct(StringComparer.Ordinal)];
        var numbers = texts.Index().ToDictionary(one => one.Item, one => one.Index, StringComparer.Ordinal);
        Write(bytes, texts);
        bytes.Write7BitEncodedInt(Services.Count);
        foreach (var phrase in Services)
        {
            bytes.Write7BitEncodedInt(numbers[phrase.Meaning]);
            bytes.Write7BitEncodedInt(phrase.Terms.Length);
            foreach (var term in phrase.Terms)
                bytes.Write7BitEncodedInt(numbers[term]);
        }
    }

    /// <summary>Writes texts.</summary>
    public static void Write(BinaryWriter bytes, IReadOnlyList<string> texts)
    {
        bytes.Write7BitEncodedInt(texts.Count);
        foreach (var text in texts)
            bytes.Write(text);
    }

    /// <summary>Reads texts.</summary>
    public static string[] Texts(BinaryReader bytes)
    {
        var texts = new string[bytes.Read7BitEncodedInt()];
        for (var i = 0; i < texts.Length; i++)
            texts[i] = bytes.ReadString();
        return texts;
    }
}
