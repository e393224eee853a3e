using System.Globalization;
using Advice.Knowledge.Words;
using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>Reads the members of one mapping. Whatever is wrong is noted and read as empty, so that reading goes on.</summary>
internal sealed class EntryReader
{
    private readonly MappingNode node;
    private readonly string noun;
    private readonly Problems problems;

    /// <summary>Opens a mapping and notes the members that do not belong there.</summary>
    /// <param name="node">The mapping.</param>
    /// <param name="noun">What it is, for messages.</param>
    /// <param name="members">The members that belong there.</param>
    /// <param name="problems">Where to note errors.</param>
    public EntryReader(MappingNode node, string noun, IReadOnlyCollection<string> members, Problems problems)
    {
        (this.node, this.noun, this.problems) = (node, noun, problems);
        foreach (var (key, value) in problems.AreRuledOut ? [] : node.Members)
        {
            if (members.Contains(key.Value))
                continue;
            if (IsPiece(key, value))
                problems.Add(ErrorCode.UnknownMember, key.Place, $"a comma ends what stands before '{key.Value}'; a number has a decimal point, as in 3.5, and a text with a comma stands between double quotes");
            else if (key.Value.Contains(':', StringComparison.Ordinal))
                problems.Add(ErrorCode.UnknownMember, key.Place, $"in '{key.Value}' a space is missing after the colon");
            else
                problems.Add(ErrorCode.UnknownMember, key.Place, $"unknown member '{key.Value}' of a {noun}; it may have {string.Join(", ", members)}", NearestWord.To(key.Value, members));
        }
    }

    /// <summary>Whether this is no member but what follows a comma within a value.</summary>
    private static bool IsPiece(ScalarNode key, Node value) => value is ScalarNode { Plain: true, Value: "" }
        && (key.Value.All(char.IsAsciiDigit) || key.Value.Contains(' ', StringComparison.Ordinal) || key.Value.IndexOfAny(['”', '“', '"']) >= 0);

    /// <summary>Where it starts.</summary>
    public Place Place => node.Place;

    /// <summary>Whether a member is there.</summary>
    public bool Has(string member) => node[member] is not null;

    /// <summary>Where a member stands, or the mapping where it is missing.</summary>
    public Place At(string member) => node[member]?.Place ?? node.Place;

    /// <summary>The node of a member.</summary>
    public Node? Raw(string member) => node[member];

    /// <summary>Notes an error at a member.</summary>
    public void Refuse(string code, string member, string message, string? nearest = null) => problems.Add(code, At(member), message, nearest);

    /// <summary>A text that must be there.</summary>
    public string Text(string member) => Required(member) is { } value ? Word(value, member) ?? "" : "";

    /// <summary>A text that may be there.</summary>
    public string? TextOrNull(string member) => node[member] is { } value ? Word(value, member) : null;

    /// <summary>A text for the technician with its plain wording for the owner.</summary>
    public Text TextPair(string member) => Pair(Text(member));

    /// <summary>The same where it may be left out; then both are empty.</summary>
    public Text TextPairOrEmpty(string member) => Pair(TextOrNull(member) ?? "");

    /// <summary>A number that must be there.</summary>
    public double Number(string member, double least, double most) =>
        Required(member) is null ? least : NumberOrNull(member, least, most) ?? least;

    /// <summary>A number that may be there.</summary>
    public double? NumberOrNull(string member, double least = double.MinValue, double most = double.MaxValue) =>
        node[member] is { } value ? Number(value, $"'{member}'", least, most) : null;

    /// <summary>A share above 0, at most 1, that must be there.</summary>
    public double Share(string member)
    {
        var share = Required(member) is null ? null : NumberOrNull(member, 0, 1);
        if (share == 0)
            Refuse(ErrorCode.OutOfRange, member, $"'{member}' must be above 0");
        return share ?? 0;
    }

    /// <summary>A whole number that must be there.</summary>
    public int Whole(string member, int least, int most)
    {
        if (Required(member) is null || Number(node[member]!, $"'{member}'", least, most) is not { } number)
            return least;
        if (number != Math.Truncate(number))
            Refuse(ErrorCode.OutOfRange, member, $"'{member}' must be a whole number");
        return (int)number;
    }

    /// <summary>A truth value; false where it is left out.</summary>
    public bool Flag(string member) => Has(member) && OneOf(member, FormatWords.Truth, false);

    /// <summary>A word of a closed list.</summary>
    public T OneOf<T>(string member, IReadOnlyDictionary<string, T> words, T? otherwise = default)
        where T : struct
    {
        if ((otherwise is null ? Required(member) : node[member]) is not { } value || Word(value, member) is not { } word)
            return otherwise ?? default;
        if (words.TryGetValue(word, out var found))
            return found;
        problems.AddNoValue(value.Place, word, member, words.Keys);
        return otherwise ?? default;
    }

    /// <summary>The id of an entry that must be named; empty where it is not known.</summary>
    public string Id(string member, IIds ids) => Required(member) is { } value ? Known(value, member, ids) ?? "" : "";

    /// <summary>The id of an entry that may be named.</summary>
    public string? IdOrNull(string member, IIds ids) => node[member] is { } value ? Known(value, member, ids) : null;

    /// <summary>Ids of entries; empty where the member is left out.</summary>
    public IReadOnlyList<string> Ids(string member, IIds ids, bool emptyIsFine = false) =>
        Distinct(Items(member, emptyIsFine), member, item => Known(item, member, ids));

    /// <summary>Ids given one by one or as a list, under the singular or the plural name.</summary>
    public IReadOnlyList<string> OneOrMore(string singular, string plural, IIds ids)
    {
        if (Has(singular) && Has(plural))
            Refuse(ErrorCode.ChooseOne, plural, $"give '{singular}' or '{plural}', not both");
        return Has(singular) ? IdOrNull(singular, ids) is { } one ? [one] : [] : Ids(plural, ids);
    }

    /// <summary>One id or a list of ids; empty where the member is left out.</summary>
    public IReadOnlyList<string> IdOrIds(string member, IIds ids) => Distinct(WordOrWords(member), member, item => Known(item, member, ids));

    /// <summary>Texts; empty where the member is left out.</summary>
    public IReadOnlyList<string> Texts(string member, bool emptyIsFine = false) =>
        Distinct(Items(member, emptyIsFine), member, item => Word(item, member));

    /// <summary>Texts that must be there.</summary>
    public IReadOnlyList<string> RequiredTexts(string member)
    {
        Required(member);
        return Texts(member);
    }

    /// <summary>One word or a list of words.</summary>
    public IReadOnlyList<ScalarNode> WordOrWords(string member) => node[member] switch
    {
        null => [],
        ScalarNode { Value.Length: > 0 } one => [one],
        ListNode => [.. Items(member).Select(item => item as ScalarNode ?? Expected<ScalarNode>(item, "a word or a list of words", member)).OfType<ScalarNode>()],
        var other => Expected<IReadOnlyList<ScalarNode>>(other, "a word or a list of words", member) ?? [],
    };

    /// <summary>The items of a list; an empty list is refused unless it is fine.</summary>
    public IReadOnlyList<Node> Items(string member, bool emptyIsFine = false)
    {
        if (node[member] is not { } value)
            return [];
        if (value is not ListNode list)
            return Expected<IReadOnlyList<Node>>(value, "a list, such as [a, b]", member) ?? [];
        if (list.Items.Count == 0 && !emptyIsFine)
            Refuse(ErrorCode.EmptyList, member, $"'{member}' is an empty list; name something or leave it out");
        return list.Items;
    }

    /// <summary>Opens a member that is a mapping.</summary>
    public EntryReader? Inner(string member, string noun, IReadOnlyCollection<string> members) =>
        node[member] switch
        {
            null => null,
            MappingNode mapping => new EntryReader(mapping, noun, members, problems),
            var other => Expected<EntryReader>(other, $"a mapping with {string.Join(", ", members)}", member),
        };

    /// <summary>Opens the mappings of a list that must be there and hold something.</summary>
    public IEnumerable<EntryReader> Inners(string member, string noun, IReadOnlyCollection<string> members)
    {
        Required(member);
        foreach (var item in Items(member))
        {
            if (item is MappingNode mapping)
                yield return new EntryReader(mapping, noun, members, problems);
            else
                Expected<EntryReader>(item, $"a list of mappings with {string.Join(", ", members)}", member);
        }
    }

    /// <summary>A number written without quotes, in a range.</summary>
    public double? Number(Node value, string name, double least = double.MinValue, double most = double.MaxValue)
    {
        // NumberStyles without white space, thousands or currency: what an author and every YAML reader take for the same number.
        const NumberStyles styles = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        if (value is not ScalarNode { Plain: true } scalar
            || !double.TryParse(scalar.Value, styles, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
        {
            problems.Add(ErrorCode.WrongShape, value.Place, $"{name} must be a number alone, without quotes or unit, not {value.Shape}");
            return null;
        }

        if (number >= least && number <= most)
            return number;
        problems.Add(ErrorCode.OutOfRange, value.Place, string.Create(CultureInfo.InvariantCulture, $"{name} is {number}; it must be {Range(least, most)}"));
        return null;
    }

    private static string Range(double least, double most) => string.Create(
        CultureInfo.InvariantCulture,
        $"{(most == double.MaxValue ? $"at least {least:0.#####}" : $"between {least:0.#####} and {most:0.#####}")}");

    private Text Pair(string trade) => new(trade, TextOrNull("plain") ?? trade);

    private Node? Required(string member)
    {
        if (node[member] is null)
            problems.Add(ErrorCode.MissingMember, node.Place, $"'{member}' is missing from this {noun}");
        return node[member];
    }

    private string? Word(Node value, string member) =>
        value is ScalarNode { Value: var word } && !string.IsNullOrWhiteSpace(word) ? word : Expected<string>(value, "a word or text", member);

    private string? Known(Node value, string member, IIds ids)
    {
        if (Word(value, member) is not { } id || ids.Contains(id))
            return (value as ScalarNode)?.Value;
        problems.Add(ErrorCode.UnknownId, value.Place, $"unknown {ids.Noun} '{id}'", NearestWord.To(id, ids.All));
        return null;
    }

    private List<string> Distinct(IReadOnlyList<Node> items, string member, Func<Node, string?> read)
    {
        var words = new List<string>(items.Count);
        foreach (var item in items)
        {
            if (read(item) is not { } word)
                continue;
            if (!problems.AreRuledOut && words.Contains(word))
                problems.Add(ErrorCode.RepeatedWord, item.Place, $"'{word}' stands twice in '{member}'");
            else
                words.Add(word);
        }

        return words;
    }

    private T? Expected<T>(Node value, string what, string member)
        where T : class
    {
        problems.Add(ErrorCode.WrongShape, value.Place, $"'{member}' must be {what}, not {value.Shape}");
        return null;
    }
}
