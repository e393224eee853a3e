using Advice.Symptoms.Snapshots;
using Advice.Symptoms.Words;

namespace Advice.Symptoms.Phrases;

/// <summary>
/// Phrases in a few arrays of numbers, each filed under the rarest of the terms without which it is never found. Terms weigh by their rarity among meanings
/// (inverse document frequency). What is filed under a term becomes phrases when a text first has it, so that a start need not make tens of thousands.
/// </summary>
internal sealed class FiledPhrases
{
    /// <summary>A phrase with fewer terms lacks none.</summary>
    public const int LeastTermsForPartial = 4;

    /// <summary>The same where it is looked for with patience.</summary>
    public const int LeastTermsForPatientPartial = 3;

    /// <summary>What is found of a phrase must tell so much of the whole.</summary>
    public const double LeastCoverage = 0.75;

    private const double RoundingError = 1e-9;
    private const int None = -1;

    private readonly bool strict;

    /// <summary>Each text once: the terms, then meanings and exact words.</summary>
    private readonly TextTable texts;

    /// <summary>Weights of the terms.</summary>
    private readonly Written<double> weights;

    /// <summary>Numbers of the terms that name a part of which a phrase says something by a class.</summary>
    private readonly Written<int> parts;

    /// <summary>For each phrase the numbers of its meaning and of its exact word.</summary>
    private readonly Written<int> heads;

    /// <summary>For each phrase its terms.</summary>
    private readonly WrittenLists<int> terms;

    /// <summary>For each term, and then for none, the phrases filed under it.</summary>
    private readonly WrittenLists<int> filed;

    private readonly bool[] isPart;
    private readonly IndexedPhrase[]?[] made;

    /// <summary>Files phrases.</summary>
    /// <param name="phrases">The phrases.</param>
    /// <param name="strict">Whether every word must be there.</param>
    public FiledPhrases(IEnumerable<Phrase> phrases, bool strict)
    {
        this.strict = strict;
        var all = phrases.DistinctBy(p => $"{p.Meaning}|{string.Join(' ', p.Terms)}|{p.Exact}", StringComparer.Ordinal).ToList();
        var meant = all.SelectMany(p => p.Terms, (p, term) => (Term: term, p.Meaning)).ToLookup(p => p.Term, p => p.Meaning, StringComparer.Ordinal);
        var meanings = all.Select(p => p.Meaning).Distinct(StringComparer.Ordinal).ToList();
        weights = new([.. meant.Select(p => 1 + Math.Log((double)meanings.Count / p.Distinct(StringComparer.Ordinal).Count()))]);
        texts = new([.. meant.Select(p => p.Key).Union(meanings, StringComparer.Ordinal).Union(all.Select(p => p.Exact).OfType<string>(), StringComparer.Ordinal)]);
        parts = new([.. all.Where(p => p.HasClass).Select(p => texts.Number(p.Terms.Last(term => !WordClasses.IsClass(term)))).Distinct()]);
        isPart = IsPart();
        heads = new([.. all.SelectMany(p => new[] { texts.Number(p.Meaning), p.Exact is null ? None : texts.Number(p.Exact) })]);
        terms = new([.. all.Select(p => Array.ConvertAll(p.Terms, texts.Number))]);
        var keyed = all.Index().ToLookup(p => Key(p.Item), p => p.Index);
        filed = new([.. Enumerable.Range(0, weights.Length + 1).Select(term => keyed[term].ToArray())]);
        made = new IndexedPhrase[weights.Length + 1][];
    }

    /// <summary>What <see cref="Write"/> wrote.</summary>
    public FiledPhrases(BinaryReader bytes)
    {
        (strict, texts, weights) = (bytes.ReadBoolean(), new(bytes), Written<double>.ReadFrom(bytes));
        (parts, heads, terms, filed) = (Written<int>.ReadFrom(bytes), Written<int>.ReadFrom(bytes), new(bytes), new(bytes));
        isPart = IsPart();
        made = new IndexedPhrase[weights.Length + 1][];
    }

    /// <summary>Writes them, to the bit.</summary>
    public void Write(BinaryWriter bytes)
    {
        bytes.Write(strict);
        texts.Write(bytes);
        weights.WriteTo(bytes);
        parts.WriteTo(bytes);
        heads.WriteTo(bytes);
        terms.WriteTo(bytes);
        filed.WriteTo(bytes);
    }

    /// <summary>Whether every word must be there.</summary>
    public bool IsStrict => strict;

    /// <summary>What a term of a phrase tells.</summary>
    public double Weight(string term) => weights[texts.Number(term)];

    /// <summary>The same of a term that may be in no phrase, which tells most.</summary>
    public double WeightOfAny(string term) => Number(term) is var number and not None ? weights[number] : double.MaxValue;

    /// <summary>Whether a term names a part of which a phrase says something by a class.</summary>
    public bool IsPart(string term) => Number(term) is var number and not None && isPart[number];

    /// <summary>The set of those of the terms that phrases have.</summary>
    public TermBits Bits(IEnumerable<string> some)
    {
        var bits = default(TermBits);
        foreach (var term in some)
            bits = bits.With(Number(term));
        return bits;
    }

    /// <summary>The set of one term.</summary>
    public TermBits Bits(string term) => default(TermBits).With(Number(term));

    /// <summary>The phrases that are filed under a term.</summary>
    public IndexedPhrase[] Under(string term) => Number(term) is var number and not None ? Made(number) : [];

    /// <summary>The phrases that may lack any of their terms.</summary>
    public IndexedPhrase[] UnderNone => Made(weights.Length);

    /// <summary>Made twice where two texts ask at the same time, which does no harm.</summary>
    private IndexedPhrase[] Made(int term)
    {
        if (made[term] is { } before)
            return before;
        var numbers = filed[term];
        var under = new IndexedPhrase[numbers.Length];
        for (var i = 0; i < under.Length; i++)
            under[i] = Indexed(numbers[i]);
        return made[term] = under;
    }

    private IndexedPhrase Indexed(int number)
    {
        var (meaning, exact) = (heads[2 * number], heads[(2 * number) + 1]);
        var asked = terms[number];
        var own = new string[asked.Length];
        for (var i = 0; i < own.Length; i++)
            own[i] = texts[asked[i]];
        var phrase = new Phrase(texts[meaning], own, exact == None ? null : texts[exact]);
        return new(number, phrase, Bits(own), Bits(Needed(phrase, LeastTermsForPartial)), Bits(Needed(phrase, LeastTermsForPatientPartial)));
    }

    /// <summary>The rarest of the terms without which a phrase is never found, by number: only a sentence that has it is searched for the phrase.</summary>
    private int Key(Phrase phrase) => Needed(phrase, LeastTermsForPatientPartial).MaxBy(Weight) is { } key ? texts.Number(key) : weights.Length;

    /// <summary>The terms without which a phrase is not found, whatever stands around them. One that may lack words lacks neither the rarest of
    /// them nor one that tells more than may be missing.</summary>
    private IEnumerable<string> Needed(Phrase phrase, int leastForPartial)
    {
        var asked = phrase.Terms.Where(term => term is not ("<failed>" or "<trouble>"));
        if (strict || phrase.IsFixed || phrase.Terms.Length < leastForPartial)
            return asked;
        var rarest = phrase.Terms.Max(Weight);
        var most = (1 - LeastCoverage + RoundingError) * phrase.Terms.Sum(Weight);
        return asked.Where(term => Weight(term) >= Math.Min(rarest, most));
    }

    /// <summary>The number of a term; none where no phrase has it.</summary>
    private int Number(string term) => texts.Number(term) is var number && number < weights.Length ? number : None;

    private bool[] IsPart()
    {
        var marked = new bool[weights.Length];
        foreach (var part in parts.Span)
            marked[part] = true;
        return marked;
    }
}
