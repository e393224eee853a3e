using System.Text.RegularExpressions;
using Advice.Knowledge.Words;
using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>First pass: sorts the entries of all files by kind and declares their ids.</summary>
internal sealed partial class Declarations(Tables tables, Problems problems)
{
    private readonly Dictionary<string, List<Entry>> entries = tables.ByKind.Keys.ToDictionary(kind => kind, _ => new List<Entry>());

    /// <summary>The entries of a kind in the order of the files.</summary>
    public IReadOnlyList<Entry> this[string kind] => entries[kind];

    /// <summary>Takes the entries of one file.</summary>
    public void Add(MappingNode root)
    {
        foreach (var (key, value) in root.Members)
        {
            var kind = key.Value;
            if (!tables.ByKind.TryGetValue(kind, out var ids))
                problems.Add(ErrorCode.UnknownKind, key.Place, $"unknown kind of entry '{kind}'; there are {string.Join(", ", tables.ByKind.Keys)}", NearestWord.To(kind, tables.ByKind.Keys));
            else if (value is ListNode list)
                Add(kind, ids, list);
            else
                problems.Add(ErrorCode.WrongShape, value.Place, $"'{kind}' must be a list of entries, each of which starts with '- ', not {value.Shape}");
        }
    }

    private static Regex Pattern(string kind) => kind switch
    {
        "codes" => Code(),
        "jurisdictions" => Jurisdiction(),
        "facts" => Fact(),
        _ => Words(),
    };

    private static string Shape(string kind) => kind switch
    {
        "codes" => "a trouble code such as P0301",
        "jurisdictions" => "two capital letters such as US, or a part of a country such as US-WA",
        "facts" => "letters and digits such as ageYears",
        _ => "lower-case words joined by hyphens, of the letters a to z and digits",
    };

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*\\z")]
    private static partial Regex Words();

    [GeneratedRegex("^[PBCU][0-3][0-9A-F]{3}\\z")]
    private static partial Regex Code();

    [GeneratedRegex("^[A-Z]{2}(-[A-Z]{2})?\\z")]
    private static partial Regex Jurisdiction();

    [GeneratedRegex("^[a-z][A-Za-z0-9]*\\z")]
    private static partial Regex Fact();

    private void Add(string kind, IDeclaredIds ids, ListNode list)
    {
        foreach (var item in list.Items)
        {
            if (item is MappingNode mapping)
                entries[kind].Add(new Entry(Declare(kind, ids, mapping), mapping));
            else
                problems.Add(ErrorCode.WrongShape, item.Place, $"an entry of '{kind}' must be a mapping with an 'id', not {item.Shape}");
        }
    }

    private string Declare(string kind, IDeclaredIds ids, MappingNode mapping)
    {
        if (mapping["id"] is not ScalarNode { Value: var id } node)
        {
            problems.Add(ErrorCode.MissingMember, mapping["id"]?.Place ?? mapping.Place, $"this {ids.Noun} needs an 'id' of one word");
            return "";
        }

        if (!problems.AreRuledOut && !Pattern(kind).IsMatch(id))
            problems.Add(ErrorCode.MalformedId, node.Place, $"the id '{id}' must be {Shape(kind)}");
        if (!ids.Declare(id, node.Place, out var first))
            problems.Add(ErrorCode.IdTaken, node.Place, $"the {ids.Noun} '{id}' is already in {first.File} line {first.Line}; ids are unique");
        return id;
    }
}
