using Advice.Knowledge.Conditions;
using Advice.Knowledge.Words;
using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>Binds <c>vehicle:</c> conditions.</summary>
internal sealed class ConditionBinder(Tables tables, Problems problems)
{
    private static readonly string[] RangeMembers = ["atLeast", "below"];

    /// <summary>The condition of an entry; always met where it has none.</summary>
    public VehicleCondition Read(EntryReader entry, string member = "vehicle")
    {
        if (entry.Raw(member) is not MappingNode mapping)
        {
            if (entry.Has(member))
                entry.Refuse(ErrorCode.WrongShape, member, $"'{member}' must be a mapping from facts to values, not {entry.Raw(member)!.Shape}");
            return VehicleCondition.Always;
        }

        var reader = new EntryReader(mapping, "vehicle condition", [.. mapping.Members.Select(m => m.Key.Value)], problems);
        var tests = new List<FactTest>();
        foreach (var (key, value) in mapping.Members)
        {
            if (!tables.Facts.Contains(key.Value))
                problems.Add(ErrorCode.UnknownId, key.Place, $"unknown vehicle fact '{key.Value}'; there are {string.Join(", ", tables.Facts.All)}", NearestWord.To(key.Value, tables.Facts.All));
            else if (tables.Facts.TryGet(key.Value, out var fact))
                tests.Add(fact.Kind == FactKind.Number ? Range(reader, fact) : Words(reader, fact, value));
        }

        return tests.Count == 0 ? VehicleCondition.Always : new VehicleCondition(tests);
    }

    /// <summary>Whether an entry has no condition, or one that every vehicle meets.</summary>
    public static bool AsksNothing(EntryReader entry) => entry.Raw("vehicle") is null or MappingNode { Members.Count: 0 };

    private static FactTest Range(EntryReader reader, VehicleFact fact)
    {
        var range = reader.Inner(fact.Id, $"range of '{fact.Id}'", RangeMembers);
        var least = range?.NumberOrNull("atLeast");
        var below = range?.NumberOrNull("below");
        if (range is not null && !range.Has("atLeast") && !range.Has("below"))
            reader.Refuse(ErrorCode.MissingMember, fact.Id, $"'{fact.Id}' needs atLeast, below or both");
        if (least >= below)
            reader.Refuse(ErrorCode.OutOfRange, fact.Id, $"no number is at least {least} and below {below}");
        return new FactTest(fact, [], least, below);
    }

    private FactTest Words(EntryReader reader, VehicleFact fact, Node value)
    {
        var words = new List<string>();
        foreach (var word in reader.WordOrWords(fact.Id))
        {
            if (!fact.Values.ContainsKey(word.Value))
                problems.AddNoValue(word.Place, word.Value, fact.Id, fact.Values.Keys);
            else if (words.Contains(word.Value))
                problems.Add(ErrorCode.RepeatedWord, word.Place, $"'{word.Value}' stands twice in '{fact.Id}'");
            else
                words.Add(word.Value);
        }

        if (words.Count == fact.Values.Count)
            problems.Add(ErrorCode.AsksNothing, value.Place, $"this names every value of '{fact.Id}', so it asks for nothing; leave it out");
        return new FactTest(fact, words, null, null);
    }
}
