namespace Advice.Symptoms;

/// <summary>The phrases of a rule set as a reader looks for them.</summary>
/// <param name="Words">All words of all phrases, each once.</param>
/// <param name="Symptoms">The phrases of symptoms, and those that say nothing.</param>
internal sealed record PhrasesRead(IReadOnlyList<string> Words, IReadOnlyList<Phrase> Symptoms)
{
    /// <summary>What <see cref="Write(BinaryWriter)"/> wrote.</summary>
    public static PhrasesRead Read(BinaryReader bytes)
    {
        var words = Texts(bytes);
        var (meanings, terms) = (Texts(bytes), Texts(bytes));
        var phrases = new Phrase[bytes.Read7BitEncodedInt()];
        for (var i = 0; i < phrases.Length; i++)
        {
            var (meaning, own) = (meanings[bytes.Read7BitEncodedInt()], new string[bytes.Read7BitEncodedInt()]);
            for (var j = 0; j < own.Length; j++)
                own[j] = terms[bytes.Read7BitEncodedInt()];
            phrases[i] = new(meaning, own, null);
        }

        return new(words, phrases);
    }

    /// <summary>Writes them; meanings and terms are named by their numbers.</summary>
    public void Write(BinaryWriter bytes)
    {
        Write(bytes, Words);
        var meanings = Numbered(bytes, Symptoms.Select(phrase => phrase.Meaning));
        var terms = Numbered(bytes, Symptoms.SelectMany(phrase => phrase.Terms));
        bytes.Write7BitEncodedInt(Symptoms.Count);
        foreach (var phrase in Symptoms)
        {
            bytes.Write7BitEncodedInt(meanings[phrase.Meaning]);
            bytes.Write7BitEncodedInt(phrase.Terms.Length);
            foreach (var term in phrase.Terms)
                bytes.Write7BitEncodedInt(terms[term]);
        }
    }

    private static Dictionary<string, int> Numbered(BinaryWriter bytes, IEnumerable<string> texts)
    {
        var each = texts.Distinct(StringComparer.Ordinal).ToList();
        Write(bytes, each);
        return each.Index().ToDictionary(one => one.Item, one => one.Index, StringComparer.Ordinal);
    }

    private static void Write(BinaryWriter bytes, IReadOnlyList<string> texts)
    {
        bytes.Write7BitEncodedInt(texts.Count);
        foreach (var text in texts)
            bytes.Write(text);
    }

    private static string[] Texts(BinaryReader bytes)
    {
        var texts = new string[bytes.Read7BitEncodedInt()];
        for (var i = 0; i < texts.Length; i++)
            texts[i] = bytes.ReadString();
        return texts;
    }
}
